using Emberwright.Diagnosis;

namespace Emberwright.Field.Visiting;

/// <summary>Suspects that stand together on the screen: one alone, or several that today's evidence does not separate.</summary>
/// <param name="Suspects">By falling probability.</param>
/// <param name="Separator">Id of the check that would separate them; null when alone or none is known.</param>
public sealed record SuspectGroup(IReadOnlyList<Suspect> Suspects, string? Separator)
{
    /// <summary>True when today's evidence does not separate them.</summary>
    public bool Alike => Suspects.Count > 1;
}

/// <summary>The suspects as listed: the likely ones, then how much is left for all others.</summary>
/// <param name="Groups">Groups by falling probability of their likeliest.</param>
/// <param name="Others">How many faults stand behind "anything else".</param>
/// <param name="OthersMost">The highest probability among those, 0…1.</param>
public sealed record SuspectList(IReadOnlyList<SuspectGroup> Groups, int Others, double OthersMost)
{
    private const double Listed = 0.02;
    private const int Most = 6;

    /// <summary>Lays out what diagnosis concluded.</summary>
    public static SuspectList From(Beliefs beliefs)
    {
        var listed = beliefs.Suspects.Where(s => s.Probability >= Listed).Take(Most).ToArray();
        var groups = new List<SuspectGroup>();
        foreach (var suspect in listed)
        {
            if (groups.Any(g => g.Suspects.Contains(suspect))) continue;
            var set = beliefs.Alike.FirstOrDefault(a => a.Faults.Contains(suspect.Fault));
            Suspect[] together = set is null ? [suspect] : [.. listed.Where(s => set.Faults.Contains(s.Fault) && !groups.Any(g => g.Suspects.Contains(s)))];
            groups.Add(new(together, together.Length > 1 ? set?.Separator : null));
        }
        var others = beliefs.Suspects.Except(listed).ToArray();
        return new(groups, others.Length, others.Select(s => s.Probability).DefaultIfEmpty(0).Max());
    }
}
