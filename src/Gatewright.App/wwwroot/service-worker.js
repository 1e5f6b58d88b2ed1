// While the program is being worked on, nothing is kept: every change shows at once.
self.addEventListener('install', () => self.skipWaiting());
