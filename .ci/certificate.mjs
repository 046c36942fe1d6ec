import { existsSync, readFileSync } from "node:fs";
import { X509Certificate } from "node:crypto";
import devCerts from "office-addin-dev-certs";

const folder = ".certificates";
const files = { ca: `${folder}/ca.crt`, cert: `${folder}/localhost.crt`, key: `${folder}/localhost.key` };

/** How a certificate authority is trusted by hand, one line a system. */
const trust = {
  win32: `certutil -user -addstore Root ${files.ca.replace("/", "\\")}`,
  darwin: `security add-trusted-cert -r trustRoot -k ~/Library/Keychains/login.keychain-db ${files.ca}`,
  linux: `import ${files.ca} in the browser's settings (Privacy and security, Manage certificates, Authorities)`,
};

/**
 * The development certificate for https on this machine, and what is missing for it to be trusted (undefined where
 * nothing is). On Windows and the Mac the system asks the user once; where that fails, and on Linux, where it would
 * need an administrator, a certificate of this folder's own is used.
 */
export async function developmentCertificate(platform = process.platform) {
  if (platform === "win32" || platform === "darwin") {
    try {
      const options = await devCerts.getHttpsServerOptions();
      if (devCerts.isCaCertificateInstalled()) return { options, missing: undefined };
    } catch (error) {
      console.log(`The system did not take a certificate: ${error.message}`);
    }
  }
  if (!usable()) await devCerts.generateCertificates(files.ca, files.cert, files.key);
  const options = Object.fromEntries(Object.entries(files).map(([name, file]) => [name, readFileSync(file)]));
  return { options, missing: trust[platform] ?? trust.linux };
}

/** True while the certificate in the folder is there and has a day left. */
function usable() {
  if (!Object.values(files).every((file) => existsSync(file))) return false;
  const { validTo } = new X509Certificate(readFileSync(files.cert));
  return Date.parse(validTo) - Date.now() > 24 * 3600 * 1000;
}
