import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { compressAssets } from './compress-assets.ts';

/** The page, built to where the API serves it. Assets are files, never `data:` addresses: the page's policy allows its own origin alone. */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), compressAssets()],
  resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
  build: {
    outDir: '../../dist/apps/web',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'es2022',
    // A lib is pure (DEVELOPERS.md): what the page does not use of it stays out, through its index too.
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => !/[\\/]libs[\\/]/.test(id) } },
  },
  server: { proxy: { '/v1': 'http://127.0.0.1:4114' } },
});
