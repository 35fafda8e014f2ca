/**
 * Sent with every reply. The page loads nothing from elsewhere, so nothing else is allowed, and no
 * other site may frame it or read what it shows.
 */
export const securityHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': [
    "default-src 'self'",
    "img-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; '),
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), geolocation=(), microphone=()',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
};
