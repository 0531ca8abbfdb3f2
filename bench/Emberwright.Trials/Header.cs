using System.Globalization;
using System.Text;

namespace Emberwright.Trials;

/// <summary>What stands above every table: when and on what it was made, and whether its goals were reached.</summary>
internal static class Header
{
    /// <summary>When and on what.</summary>
    public static string Made => FormattableString.Invariant($"Made on {DateTime.UtcNow:yyyy-MM-dd} on {Environment.ProcessorCount} cores shared with other work.");

    /// <summary>A goal with what was reached.</summary>
    /// <param name="text">Receives the line.</param>
    /// <param name="goal">The goal, in words.</param>
    /// <param name="reached">What was reached.</param>
    /// <param name="met">True when it was met.</param>
    public static void Goal(StringBuilder text, string goal, FormattableString reached, bool met) =>
        text.AppendLine(FormattableString.Invariant($"- {goal}: {reached.ToString(CultureInfo.InvariantCulture)}, {(met ? "met" : "**not met**")}."));

    /// <summary>95 % interval of a share by Wilson's formula, as words.</summary>
    /// <remarks>Wilson, J. Am. Stat. Assoc. 22 (1927) 209. From memory.</remarks>
    public static string Within(int hits, int of)
    {
        if (of == 0) return "–";
        const double z = 1.96;
        var p = (double)hits / of;
        var middle = (p + (z * z / (2 * of))) / (1 + (z * z / of));
        var half = z / (1 + (z * z / of)) * Math.Sqrt((p * (1 - p) / of) + (z * z / (4.0 * of * of)));
        return FormattableString.Invariant($"{100 * Math.Max(middle - half, 0):0.0}–{100 * Math.Min(middle + half, 1):0.0} %");
    }
}
