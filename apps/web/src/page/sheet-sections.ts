export { Sheet } from '../sheet/Sheet.tsx';
export { KeepSection } from '../kept/KeepSection.tsx';
export { MadeSection } from '../made/MadeSection.tsx';
