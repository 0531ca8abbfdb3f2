namespace Emberwright.Diagnosis.Safety;

/// <summary>Which safety stops stand on the evidence.</summary>
public static class SafetyStops
{
    /// <summary>
    /// The stops that stand, most urgent first, one for each rule. A stop stands from the fact that called for it until a
    /// fact of a later epoch releases it: something must have been done in between. What has not been measured releases
    /// nothing.
    /// </summary>
    /// <param name="evidence">All evidence, in any order.</param>
    public static IReadOnlyList<StandingStop> Standing(IReadOnlyList<Evidence> evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        var ordered = evidence.OrderBy(e => e.Epoch).ThenBy(e => e.Id, StringComparer.Ordinal).ToArray();
        var stops = new List<(Urgency Urgency, StandingStop Stop)>();
        foreach (var rule in SafetyRules.All)
        {
            var standing = ordered.LastOrDefault(e => rule.Triggers.Any(t => t.Calls(e)) && !Released(rule, e, ordered));
            if (standing is not null)
                stops.Add((rule.Urgency, new StandingStop(rule.Id, rule.Words, standing.Id, rule.ReleasedBy, rule.Source)));
        }
        return [.. stops.OrderBy(s => s.Urgency).Select(s => s.Stop)];
    }

    private static bool Released(SafetyRule rule, Evidence called, Evidence[] all)
    {
        if (rule.Releases.Count == 0) return false;
        Evidence[] later = [.. all.Where(e => e.Epoch > called.Epoch)];
        return rule.Releases.Any(r => r.Ends(called, later));
    }
}
