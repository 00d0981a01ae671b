export const HOW_TO_MEASURE_THICKNESS =
  'Lay four layers of the swatch under a small book, measure their height and divide by four.';
