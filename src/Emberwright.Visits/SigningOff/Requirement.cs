namespace Emberwright.Visits.SigningOff;

/// <summary>One thing a kind of visit requires. Its check yields nothing when it is met.</summary>
internal sealed record Requirement(string Id, Section Go, Func<SignOffFacts, IEnumerable<Finding>> Check);

/// <summary>Either something missing, or a limitation that the report must print.</summary>
internal readonly record struct Finding(bool IsMissing, string Words)
{
    public static Finding Lacks(string words) => new(true, words);

    public static Finding Limits(string words) => new(false, words);

    public static IEnumerable<Finding> Unless(bool met, string words) => met ? [] : [Lacks(words)];
}
