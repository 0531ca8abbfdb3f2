using Emberwright.Diagnosis;

namespace Emberwright.Cli.Attending;

/// <summary>How suspects moved between two conclusions.</summary>
internal static class Movement
{
    private const int Most = 5;
    private const double Least = 0.005;

    /// <summary>One line: who moved most, from where to where; likeliest first.</summary>
    public static string Between(Beliefs before, Beliefs after)
    {
        var was = before.Suspects.ToDictionary(s => s.Fault, s => s.Probability);
        var moved = after.Suspects
            .Select(s => (s.Name, From: was.GetValueOrDefault(s.Fault), To: s.Probability))
            .Concat(before.Suspects.Where(b => after.Suspects.All(a => a.Fault != b.Fault)).Select(b => (b.Name, From: b.Probability, To: 0.0)))
            .Where(m => Math.Abs(m.To - m.From) >= Least)
            .OrderByDescending(m => Math.Abs(m.To - m.From)).Take(Most).OrderByDescending(m => m.To).ToList();
        return moved.Count == 0
            ? $"No suspect moved. {First(after)}"
            : $"Moved: {string.Join("; ", moved.Select(m => $"{m.Name} {Percent(m.From)} → {Percent(m.To)} %"))}.";
    }

    /// <summary>The likeliest three, as they stand.</summary>
    public static string First(Beliefs beliefs)
    {
        var first = beliefs.Suspects.Where(s => s.Probability >= Least).Take(3).ToList();
        return first.Count == 0 ? "" : $"Likeliest: {string.Join("; ", first.Select(s => $"{s.Name} {Percent(s.Probability)} %"))}.";
    }

    private static string Percent(double p) => (100 * p).ToString(p is < 0.01 or > 0.99 ? "0.#" : "0");
}
