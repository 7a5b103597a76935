// Verifies a sign-off with a JOSE library that has nothing to do with Chock: node verify.mjs TRUST SIGNOFF
import { readFileSync } from 'node:fs';
import { compactVerify, createLocalJWKSet } from 'jose';

const [trust, signOff] = process.argv.slice(2);
const keys = createLocalJWKSet(JSON.parse(readFileSync(trust, 'utf8')));
const jws = readFileSync(signOff, 'utf8');
const { payload, protectedHeader } = await compactVerify(jws, keys, { algorithms: ['EdDSA'] });
const said = JSON.parse(new TextDecoder().decode(payload));
if (said.chock !== 'sign-off/1' || said.verdict !== 'released' || said.signer.keyId !== protectedHeader.kid) {
  throw new Error('signed, but not a sign-off');
}
await compactVerify(said.seal, keys, { algorithms: ['EdDSA'] });

// It must be able to fail: one letter of the payload, one of the signature.
for (const at of [jws.indexOf('.') + 10, jws.lastIndexOf('.') + 10]) {
  const altered = jws.slice(0, at) + (jws[at] === 'A' ? 'B' : 'A') + jws.slice(at + 1);
  const believed = await compactVerify(altered, keys, { algorithms: ['EdDSA'] }).then(() => true, () => false);
  if (believed) {
    throw new Error('an altered sign-off was believed');
  }
}
console.log(`${said.record.id} at ${said.gate}: signed by ${said.signer.name} on ${said.signedAt}; the signature holds`);
