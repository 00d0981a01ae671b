import type { NextFunction, Request, Response } from 'express';

/** The page: its own scripts, styles and requests, nothing from anywhere else. */
const PAGE_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** The API's documentation is drawn by a library that writes styles into its page. */
const DOCS_POLICY = PAGE_POLICY.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'");

/** On every answer. What is private is not kept by caches. */
const HEADERS = [
  ['X-Content-Type-Options', 'nosniff'],
  ['X-Frame-Options', 'DENY'],
  ['Referrer-Policy', 'no-referrer'],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Cross-Origin-Resource-Policy', 'same-origin'],
  ['Permissions-Policy', 'camera=(), geolocation=(), microphone=()'],
  ['Cache-Control', 'no-store'],
] as const;

export function securityHeaders(request: Request, response: Response, next: NextFunction): void {
  response.setHeader('Content-Security-Policy', /^\/docs(\/|$)/.test(request.path) ? DOCS_POLICY : PAGE_POLICY);
  for (const [name, value] of HEADERS) response.setHeader(name, value);
  next();
}
