// Where does the draught stand when warm gas in the vent and the wind on its terminal nearly balance?
// There the flow through the vent may turn round within a hundredth of a pascal, so that methods that hold the wind and look for
// the flow lose their footing. The path of all states is followed instead, the terminal's pressure being one more unknown:
//   F(z, w) = 0,   τ·(Δz, Δw) = Δs
// F residuals of the coupled set; z its unknowns and w the terminal's pressure, both scaled; τ the path's direction; s its length.
// It begins where the terminal is pulled at so hard that gas goes up the vent whatever the weather, and ends where w is the
// terminal's own: the path is continuous and must pass it, even where it turns back on itself.
// Source: Keller (1977), Numerical solution of bifurcation and nonlinear eigenvalue problems; Allgower & Georg (1990), ch. 2 and 6.
// Worked value: none published for this set; every end is judged by the residuals as any other solution.
namespace Emberwright.Stove.Air;

/// <summary>Follows the states of a stove from a pulled terminal to its own.</summary>
internal static class DraughtPath
{
    private const double PullPa = 200;
    private const double UnitPa = 10;
    private const double FirstLength = 0.2;
    private const double LeastLength = 1e-9;
    private const double MostLength = 3;
    private const int MostSteps = 1500;
    private const int MostCorrections = 7;
    private const double SmallCorrection = 1e-9;

    // The terminal as a link's end.
    private const int Terminal = -3;

    /// <summary>The scenario that the path begins at.</summary>
    public static Scenario Beginning(Scenario s) => s with { WindPa = s.WindPa - PullPa };

    /// <summary>
    /// Goes from <paramref name="z"/>, a solution of <see cref="Beginning"/>, to where the terminal's pressure is its own.
    /// </summary>
    /// <returns>True with the state near enough for Newton's method in <paramref name="z"/>; false when the path was lost.</returns>
    public static bool Follow(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, ref int iterations)
    {
        var n = at.Count;
        var m = n + 1;
        Span<double> here = stackalloc double[m];
        Span<double> next = stackalloc double[m];
        Span<double> direction = stackalloc double[m];
        Span<double> turned = stackalloc double[m];
        Span<double> matrix = stackalloc double[m * m];
        for (var k = 0; k < n; k++)
        {
            here[k] = z[k] / Scaling.Column(at, k);
        }

        here[n] = -PullPa / UnitPa;
        direction.Clear();
        direction[n] = 1;
        var length = FirstLength;
        for (var step = 0; step < MostSteps && length > LeastLength; step++)
        {
            for (var k = 0; k < m; k++)
            {
                next[k] = here[k] + (length * direction[k]);
            }

            var corrections = Correct(s, at, next, here, direction, length, points, matrix, turned);
            iterations += MostCorrections;
            if (corrections < 0)
            {
                length *= 0.4;
                continue;
            }

            if (next[n] >= 0)
            {
                if (next[n] < 1e-7)
                {
                    Unscale(at, next, z);
                    return true;
                }

                length *= Math.Clamp(-here[n] / (next[n] - here[n]), 0.02, 0.98);
                continue;
            }

            if (next[n] > -1e-9)
            {
                Unscale(at, next, z);
                return true;
            }

            next.CopyTo(here);
            turned.CopyTo(direction);
            length = Math.Min(length * (corrections <= 3 ? 1.7 : 0.8), MostLength);
        }

        return false;
    }

    /// <summary>Newton's method on the set and the plane across the path; the number of corrections, or −1.</summary>
    private static int Correct(Scenario s, in UnknownLayout at, Span<double> next, ReadOnlySpan<double> here, ReadOnlySpan<double> direction,
        double length, Span<LinkPoint> points, Span<double> matrix, Span<double> turned)
    {
        var n = at.Count;
        var m = n + 1;
        Span<double> state = stackalloc double[n];
        Span<double> residual = stackalloc double[n];
        Span<double> jacobian = stackalloc double[n * n];
        Span<double> move = stackalloc double[m];
        Span<int> pivots = stackalloc int[m];
        for (var k = 1; k <= MostCorrections; k++)
        {
            Unscale(at, next, state);
            CoupledEquations.Assemble(s with { WindPa = s.WindPa + (UnitPa * next[n]) }, at, state, points, residual, jacobian);
            Scaling.Apply(at, jacobian, residual);
            matrix.Clear();
            double across = -length;
            for (var i = 0; i < n; i++)
            {
                jacobian.Slice(i * n, n).CopyTo(matrix.Slice(i * m, n));
                matrix[(i * m) + n] = i < at.Links ? ByTerminal(s.Links[i]) * UnitPa * Scaling.Row(at, i) : 0;
                matrix[(n * m) + i] = direction[i];
                across += direction[i] * (next[i] - here[i]);
                move[i] = residual[i];
            }

            matrix[(n * m) + n] = direction[n];
            move[n] = across + (direction[n] * (next[n] - here[n]));
            if (!DenseLu.Factor(matrix, pivots, m))
            {
                return -1;
            }

            DenseLu.Solve(matrix, pivots, m, move);
            double largest = 0;
            for (var i = 0; i < m; i++)
            {
                next[i] -= move[i];
                largest = Math.Max(largest, Math.Abs(move[i]));
            }

            if (!(largest < Math.Max(1, 2 * length)))
            {
                return -1;
            }

            if (largest < SmallCorrection)
            {
                Turn(matrix, pivots, m, direction, turned);
                return k;
            }
        }

        return -1;
    }

    /// <summary>The path's direction at a point on it, going on the way it came.</summary>
    private static void Turn(ReadOnlySpan<double> matrix, ReadOnlySpan<int> pivots, int m, ReadOnlySpan<double> direction, Span<double> turned)
    {
        turned.Clear();
        turned[m - 1] = 1;
        DenseLu.Solve(matrix, pivots, m, turned);
        double size = 0, along = 0;
        for (var i = 0; i < m; i++)
        {
            size += turned[i] * turned[i];
            along += turned[i] * direction[i];
        }

        var scale = Math.CopySign(1 / Math.Sqrt(size), along);
        for (var i = 0; i < m; i++)
        {
            turned[i] *= scale;
        }
    }

    private static double ByTerminal(in LinkModel link) => (link.From == Terminal ? 1 : 0) - (link.To == Terminal ? 1 : 0);

    private static void Unscale(in UnknownLayout at, ReadOnlySpan<double> scaled, Span<double> z)
    {
        for (var k = 0; k < at.Count; k++)
        {
            z[k] = scaled[k] * Scaling.Column(at, k);
        }
    }
}
