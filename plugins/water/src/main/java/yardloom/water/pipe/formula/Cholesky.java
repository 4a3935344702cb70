package yardloom.water.pipe.formula;

/**
 * Solves a symmetric positive definite system in place.
 *
 * <p>References: [1] G. Golub and C. Van Loan, Matrix Computations, algorithm 4.2.2 (Cholesky).
 */
final class Cholesky {
  private Cholesky() {}

  /**
   * The solution of {@code matrix x = right}; both arguments are overwritten.
   *
   * @throws IllegalStateException if the matrix is not positive definite
   */
  static double[] solve(double[][] matrix, double[] right) {
    int n = right.length;
    for (int j = 0; j < n; j++) {
      double[] rowJ = matrix[j];
      for (int i = j; i < n; i++) {
        double[] rowI = matrix[i];
        double sum = rowI[j];
        for (int k = 0; k < j; k++) {
          sum -= rowI[k] * rowJ[k];
        }
        if (i > j) {
          rowI[j] = sum / rowJ[j];
        } else if (sum > 0) {
          rowJ[j] = Math.sqrt(sum);
        } else {
          throw new IllegalStateException("a joint has no way to a source");
        }
      }
    }
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        right[i] -= matrix[i][k] * right[k];
      }
      right[i] /= matrix[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        right[i] -= matrix[k][i] * right[k];
      }
      right[i] /= matrix[i][i];
    }
    return right;
  }
}
