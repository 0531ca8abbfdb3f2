// Question:    what are the inverse, the log determinant and a square root of a small positive definite matrix?
// Equation:    A = L·Lᵀ, L lower triangular.
// Symbols:     A symmetric positive definite, row major, n ≤ about 60.
// Validity:    a pivot that is not positive ends the factorisation and the caller is told.
// Assumptions: none.
// Source:      Golub & Van Loan, Matrix Computations, 4.2.
// Worked:      [[4, 2], [2, 5]] → L = [[2, 0], [1, 2]] (by hand).
// Why our own: some four hundred of these are factored for one diagnosis, in the browser, where neither the allocation
// nor the thread pool of a general library is welcome; it is forty lines.
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Cholesky factor of a small dense matrix, kept in one flat array.</summary>
internal sealed class Cholesky
{
    private readonly double[] _l;

    private Cholesky(double[] l, int size)
    {
        _l = l;
        Size = size;
    }

    /// <summary>Number of rows.</summary>
    public int Size { get; }

    /// <summary>Factors a row-major matrix, of which the lower triangle is read; null when it is not positive definite.</summary>
    public static Cholesky? Factor(double[] matrix, int size)
    {
        var l = new double[size * size];
        for (var i = 0; i < size; i++)
        {
            var rowI = l.AsSpan(i * size, size);
            for (var j = 0; j <= i; j++)
            {
                var rowJ = l.AsSpan(j * size, size);
                var sum = matrix[i * size + j] - Dot(rowI[..j], rowJ[..j]);
                if (i == j)
                {
                    if (!(sum > 0)) return null;
                    rowI[i] = Math.Sqrt(sum);
                }
                else
                {
                    rowI[j] = sum / rowJ[j];
                }
            }
        }
        return new Cholesky(l, size);
    }

    /// <summary>ln|A|.</summary>
    public double LnDeterminant
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Size; i++) sum += Math.Log(_l[i * Size + i]);
            return 2 * sum;
        }
    }

    /// <summary>A⁻¹·b.</summary>
    public double[] Solve(ReadOnlySpan<double> b)
    {
        var x = b.ToArray();
        Forward(x);
        Back(x);
        return x;
    }

    /// <summary>x ← L⁻¹·x.</summary>
    public void Forward(Span<double> x)
    {
        for (var i = 0; i < Size; i++)
            x[i] = (x[i] - Dot(_l.AsSpan(i * Size, i), x[..i])) / _l[i * Size + i];
    }

    /// <summary>x ← L⁻ᵀ·x; turns independent standard deviates into a draw of N(0, A⁻¹).</summary>
    public void Back(Span<double> x)
    {
        for (var i = Size - 1; i >= 0; i--)
        {
            x[i] /= _l[i * Size + i];
            var xi = x[i];
            AddScaled(x[..i], -xi, _l.AsSpan(i * Size, i));
        }
    }

    /// <summary>L·z; turns independent standard deviates into a draw of N(0, A).</summary>
    public double[] Spread(ReadOnlySpan<double> z)
    {
        var x = new double[Size];
        for (var i = 0; i < Size; i++) x[i] = Dot(_l.AsSpan(i * Size, i + 1), z[..(i + 1)]);
        return x;
    }

    /// <summary>A⁻¹, row major.</summary>
    public double[] Inverse()
    {
        var n = Size;
        var inverse = new double[n * n];
        var column = new double[n];
        for (var k = 0; k < n; k++)
        {
            Array.Clear(column);
            column[k] = 1;
            for (var i = k; i < n; i++)
                column[i] = ((i == k ? 1 : 0) - Dot(_l.AsSpan(i * n + k, i - k), column.AsSpan(k, i - k))) / _l[i * n + i];
            Back(column);
            for (var i = 0; i < n; i++) inverse[i * n + k] = column[i];
        }
        return inverse;
    }

    /// <summary>Σ aᵢ·bᵢ, summed in the same order on every machine.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var (even, odd) = (Vector128<double>.Zero, Vector128<double>.Zero);
        ref var x = ref MemoryMarshal.GetReference(a);
        ref var y = ref MemoryMarshal.GetReference(b[..a.Length]);
        var k = 0;
        for (; k <= a.Length - 4; k += 4)
        {
            even += Vector128.LoadUnsafe(ref x, (nuint)k) * Vector128.LoadUnsafe(ref y, (nuint)k);
            odd += Vector128.LoadUnsafe(ref x, (nuint)k + 2) * Vector128.LoadUnsafe(ref y, (nuint)k + 2);
        }
        var sum = Vector128.Sum(even + odd);
        for (; k < a.Length; k++) sum += a[k] * b[k];
        return sum;
    }

    /// <summary>target ← target + factor·row.</summary>
    public static void AddScaled(Span<double> target, double factor, ReadOnlySpan<double> row)
    {
        if (factor == 0) return;
        ref var x = ref MemoryMarshal.GetReference(target);
        ref var y = ref MemoryMarshal.GetReference(row[..target.Length]);
        var by = Vector128.Create(factor);
        var k = 0;
        for (; k <= target.Length - 2; k += 2)
            (Vector128.LoadUnsafe(ref x, (nuint)k) + by * Vector128.LoadUnsafe(ref y, (nuint)k)).StoreUnsafe(ref x, (nuint)k);
        for (; k < target.Length; k++) target[k] += factor * row[k];
    }
}
