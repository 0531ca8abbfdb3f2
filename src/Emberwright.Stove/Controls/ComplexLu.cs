// What solves the small dense systems of a circuit?
// Equation: P·A = L·U by Gaussian elimination with partial pivoting; then A·x = b by two substitutions.
// Symbols: A n×n complex matrix (admittances in S, or dimensionless rows of ideal sources), b right-hand side, x unknowns.
// Validity: n up to a few dozen; an exactly zero pivot is reported, never divided by.
// Assumptions: none on structure; zero multipliers are skipped, which makes tree-like circuits nearly free.
// Source: Golub & Van Loan, Matrix Computations, algorithm 3.4.1 (from memory).
// Worked value: A = [2 1; 1 3], b = [3; 5] gives x = [0.8; 1.4].

using System.Numerics;

namespace Emberwright.Stove.Controls;

/// <summary>A factorised complex matrix, kept so that further right-hand sides cost only substitutions.</summary>
internal sealed class ComplexLu
{
    private readonly Complex[] _lu;
    private readonly int[] _row;
    private readonly int _n;

    private ComplexLu(Complex[] lu, int[] row, int n) => (_lu, _row, _n) = (lu, row, n);

    /// <summary>Factorises in place; returns null and the column whose pivot is zero when the matrix is singular.</summary>
    internal static ComplexLu? Factor(Complex[] a, int n, out int singularColumn)
    {
        var row = new int[n];
        for (var i = 0; i < n; i++) row[i] = i;
        for (var k = 0; k < n; k++)
        {
            var best = k;
            var bestSize = Size(a[k * n + k]);
            for (var i = k + 1; i < n; i++)
            {
                var size = Size(a[i * n + k]);
                if (size > bestSize) (best, bestSize) = (i, size);
            }
            if (bestSize == 0)
            {
                singularColumn = k;
                return null;
            }
            if (best != k)
            {
                a.AsSpan(k * n, n).SwapWith(a.AsSpan(best * n, n));
                (row[k], row[best]) = (row[best], row[k]);
            }
            Eliminate(a, n, k);
        }
        singularColumn = -1;
        return new ComplexLu(a, row, n);
    }

    /// <summary>Solves A·x = b.</summary>
    internal Complex[] Solve(ReadOnlySpan<Complex> b)
    {
        var x = new Complex[_n];
        for (var i = 0; i < _n; i++)
        {
            var sum = b[_row[i]];
            for (var j = 0; j < i; j++)
                if (_lu[i * _n + j] != Complex.Zero) sum -= _lu[i * _n + j] * x[j];
            x[i] = sum;
        }
        for (var i = _n - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var j = i + 1; j < _n; j++)
                if (_lu[i * _n + j] != Complex.Zero) sum -= _lu[i * _n + j] * x[j];
            x[i] = sum / _lu[i * _n + i];
        }
        return x;
    }

    private static void Eliminate(Complex[] a, int n, int k)
    {
        var pivotRow = a.AsSpan(k * n, n);
        var inverse = Complex.One / pivotRow[k];
        for (var i = k + 1; i < n; i++)
        {
            var r = a.AsSpan(i * n, n);
            if (r[k] == Complex.Zero) continue;
            var factor = r[k] * inverse;
            r[k] = factor;
            for (var j = k + 1; j < n; j++)
                if (pivotRow[j] != Complex.Zero) r[j] -= factor * pivotRow[j];
        }
    }

    private static double Size(Complex z) => Math.Abs(z.Real) + Math.Abs(z.Imaginary);
}

file static class Rows
{
    internal static void SwapWith(this Span<Complex> a, Span<Complex> b)
    {
        for (var i = 0; i < a.Length; i++) (a[i], b[i]) = (b[i], a[i]);
    }
}
