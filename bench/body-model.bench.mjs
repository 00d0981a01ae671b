/**
 * Conditioning the body model on 12 of 23 dimensions and predicting the other 11, against the same with ml-matrix: `npm run bench -- body-model`.
 * Prints how many times as fast; 3 is asked for. Both give mean and covariance; the largest difference is printed too.
 */
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { condition, loadBodyModel } from '#body';

const ROUNDS = 9;
const REPEATS = 4000;

/** A woman of whom nothing is known: the model's own prior, as logarithms. */
const { fromEvidence } = await loadBodyModel();
const {
  names,
  values: mm,
  matrix,
} = fromEvidence({
  figure: 'woman',
  ageYears: 40,
  known: [],
  hidden: [],
  observations: [],
});
const n = 23;
const medians = names.map((name) => mm[name].value);
const sigma = Matrix.zeros(n, n);
for (let row = 0; row < n; row++)
  for (let column = 0; column < n; column++)
    sigma.set(row, column, matrix[row][column] / (medians[row] * medians[column]));
const mean = medians.slice(0, n).map(Math.log);
const prior = { n, mean, covariance: sigma.to1DArray() };
const known = Array.from({ length: 12 }, (_, i) => 2 * i - (i > 5 ? 1 : 0));
const rest = Array.from({ length: n }, (_, i) => i).filter((i) => !known.includes(i));
const values = known.map((index, i) => mean[index] + 0.05 * Math.sin(i));
const noise = known.map((_, i) => 0.0001 + 0.00001 * i);

const own = () => condition(prior, known, values, noise);

function withMlMatrix() {
  const seen = sigma.selection(known, known).add(Matrix.diag(noise));
  const across = sigma.selection(known, rest);
  const away = Matrix.columnVector(values.map((value, i) => value - mean[known[i]]));
  const solved = new CholeskyDecomposition(seen).solve(across);
  return {
    mean: solved
      .transpose()
      .mmul(away)
      .add(Matrix.columnVector(rest.map((index) => mean[index]))),
    covariance: sigma.selection(rest, rest).sub(across.transpose().mmul(solved)),
  };
}

function seconds(work) {
  const start = performance.now();
  for (let i = 0; i < REPEATS; i++) work();
  return (performance.now() - start) / 1000;
}

const [a, b] = [own(), withMlMatrix()];
const apart = Math.max(
  ...[...a.mean].map((value, i) => Math.abs(value - b.mean.get(i, 0))),
  ...[...a.covariance].map((value, i) => Math.abs(value - b.covariance.to1DArray()[i])),
);
seconds(own);
seconds(withMlMatrix);
const ratios = Array.from({ length: ROUNDS }, () => {
  const ours = seconds(own);
  return seconds(withMlMatrix) / ours;
}).sort((x, y) => x - y);
console.log(`largest difference ${apart.toExponential(1)} (asked: 1e-9)`);
console.log(
  `times as fast as ml-matrix: median ${ratios[(ROUNDS - 1) / 2].toFixed(1)}, from ${ratios[0].toFixed(1)} to ${ratios.at(-1).toFixed(1)} (asked: 3)`,
);
