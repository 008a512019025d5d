import { expect, test } from '@playwright/test';

// Class rooms open the site over plain HTTP, by whichever address the server has in their network.
// Whether a form comes from the site itself is asked before its page is looked for: any path will do.
const FORM = '/nowhere';

for (const host of ['127.0.0.1:41730', 'localhost:41730', '192.168.7.5:41730']) {
  test(`the site opened as ${host} answers, and takes its own forms`, async ({ request }) => {
    const opened = await request.get('/', { headers: { host } });
    expect(opened.status()).toBe(200);

    const form = { 'content-type': 'application/x-www-form-urlencoded' };
    const own = await request.post(FORM, { headers: { ...form, host, origin: `http://${host}` } });
    expect(own.status()).not.toBe(403);

    for (const origin of ['https://elsewhere.example', `https://${host}`, 'http://localhost:1']) {
      const foreign = await request.post(FORM, { headers: { ...form, host, origin } });
      expect(foreign.status()).toBe(403);
    }
  });
}
