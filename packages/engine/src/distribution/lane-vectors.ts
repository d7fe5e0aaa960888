// Vector work of the solvers, four lanes in one pass; values of one cell stand together.

/** Products of two vectors, by lane. */
export function dots(a: Float64Array, b: Float64Array, result: Float64Array): void {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  for (let i = 0; i < a.length; i += 4) {
    s0 += a[i]! * b[i]!;
    s1 += a[i + 1]! * b[i + 1]!;
    s2 += a[i + 2]! * b[i + 2]!;
    s3 += a[i + 3]! * b[i + 3]!;
  }
  result[0] = s0;
  result[1] = s1;
  result[2] = s2;
  result[3] = s3;
}

/** Two steps in one: x += by a, r -= by image. */
export function step(
  x: Float64Array,
  a: Float64Array,
  r: Float64Array,
  image: Float64Array,
  by: Float64Array,
): void {
  const c0 = by[0]!;
  const c1 = by[1]!;
  const c2 = by[2]!;
  const c3 = by[3]!;
  for (let i = 0; i < x.length; i += 4) {
    x[i] = x[i]! + c0 * a[i]!;
    x[i + 1] = x[i + 1]! + c1 * a[i + 1]!;
    x[i + 2] = x[i + 2]! + c2 * a[i + 2]!;
    x[i + 3] = x[i + 3]! + c3 * a[i + 3]!;
    r[i] = r[i]! - c0 * image[i]!;
    r[i + 1] = r[i + 1]! - c1 * image[i + 1]!;
    r[i + 2] = r[i + 2]! - c2 * image[i + 2]!;
    r[i + 3] = r[i + 3]! - c3 * image[i + 3]!;
  }
}

/** p = r + beta (p − omega v), by lane. */
export function turn(
  r: Float64Array,
  p: Float64Array,
  v: Float64Array,
  beta: Float64Array,
  omega: Float64Array,
): void {
  const b0 = beta[0]!;
  const b1 = beta[1]!;
  const b2 = beta[2]!;
  const b3 = beta[3]!;
  const o0 = omega[0]!;
  const o1 = omega[1]!;
  const o2 = omega[2]!;
  const o3 = omega[3]!;
  for (let i = 0; i < p.length; i += 4) {
    p[i] = r[i]! + b0 * (p[i]! - o0 * v[i]!);
    p[i + 1] = r[i + 1]! + b1 * (p[i + 1]! - o1 * v[i + 1]!);
    p[i + 2] = r[i + 2]! + b2 * (p[i + 2]! - o2 * v[i + 2]!);
    p[i + 3] = r[i + 3]! + b3 * (p[i + 3]! - o3 * v[i + 3]!);
  }
}

/** r = b − image. */
export function rest(b: Float64Array, image: Float64Array, r: Float64Array): void {
  for (let i = 0; i < r.length; i += 1) r[i] = b[i]! - image[i]!;
}

/** Sums of a vector, by lane. */
export function laneSums(a: Float64Array, result: Float64Array): void {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  for (let i = 0; i < a.length; i += 4) {
    s0 += a[i]!;
    s1 += a[i + 1]!;
    s2 += a[i + 2]!;
    s3 += a[i + 3]!;
  }
  result[0] = s0;
  result[1] = s1;
  result[2] = s2;
  result[3] = s3;
}

/** Adds one number to each lane. */
export function shift(x: Float64Array, by: Float64Array): void {
  const c0 = by[0]!;
  const c1 = by[1]!;
  const c2 = by[2]!;
  const c3 = by[3]!;
  for (let i = 0; i < x.length; i += 4) {
    x[i] = x[i]! + c0;
    x[i + 1] = x[i + 1]! + c1;
    x[i + 2] = x[i + 2]! + c2;
    x[i + 3] = x[i + 3]! + c3;
  }
}
