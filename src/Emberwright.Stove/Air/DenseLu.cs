// Solves a small dense system A·x = b by Gaussian elimination with partial pivoting, skipping the zeros
// that a flow network leaves in its Jacobian. Source: Golub & Van Loan, Matrix Computations, alg. 3.4.1.
namespace Emberwright.Stove.Air;

/// <summary>LU factors of a small dense matrix held in the caller's memory.</summary>
internal static class DenseLu
{
    /// <summary>Factors in place; false when a pivot vanishes.</summary>
    public static bool Factor(Span<double> a, Span<int> pivots, int n)
    {
        for (var k = 0; k < n; k++)
        {
            var best = k;
            var size = Math.Abs(a[(k * n) + k]);
            for (var i = k + 1; i < n; i++)
            {
                var candidate = Math.Abs(a[(i * n) + k]);
                if (candidate > size)
                {
                    size = candidate;
                    best = i;
                }
            }

            pivots[k] = best;
            if (!(size > 1e-300))
            {
                return false;
            }

            var rowK = a.Slice(k * n, n);
            if (best != k)
            {
                var other = a.Slice(best * n, n);
                for (var j = 0; j < n; j++)
                {
                    (rowK[j], other[j]) = (other[j], rowK[j]);
                }
            }

            var inverse = 1 / rowK[k];
            for (var i = k + 1; i < n; i++)
            {
                var row = a.Slice(i * n, n);
                if (row[k] == 0)
                {
                    continue;
                }

                var factor = row[k] * inverse;
                row[k] = factor;
                for (var j = k + 1; j < n; j++)
                {
                    row[j] -= factor * rowK[j];
                }
            }
        }

        return true;
    }

    /// <summary>Replaces b by the solution.</summary>
    public static void Solve(ReadOnlySpan<double> lu, ReadOnlySpan<int> pivots, int n, Span<double> b)
    {
        for (var k = 0; k < n; k++)
        {
            var p = pivots[k];
            if (p != k)
            {
                (b[k], b[p]) = (b[p], b[k]);
            }
        }

        for (var i = 1; i < n; i++)
        {
            var row = lu.Slice(i * n, i);
            var sum = b[i];
            for (var j = 0; j < row.Length; j++)
            {
                sum -= row[j] * b[j];
            }

            b[i] = sum;
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var row = lu.Slice(i * n, n);
            var sum = b[i];
            for (var j = i + 1; j < n; j++)
            {
                sum -= row[j] * b[j];
            }

            b[i] = sum / row[i];
        }
    }
}
