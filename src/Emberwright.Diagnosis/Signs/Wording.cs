using Emberwright.Stove;

namespace Emberwright.Diagnosis.Signs;

/// <summary>The few forms in which the catalogue's signs are written down.</summary>
internal static class Wording
{
    /// <summary>Origin of every stated probability and cut point here.</summary>
    public const string Practice = "common practice, no source";

    /// <summary>An outcome with its usual probability, the phrases that say it within its topic and those that say it alone.</summary>
    public static Outcome Out(string id, string words, double usual, string[]? said = null, string[]? alone = null) =>
        new(id, words, usual, [.. said ?? [], .. alone ?? []], alone ?? []);

    /// <summary>A sign with stated probabilities only.</summary>
    public static Sign Stated(string id, string question, string[] topics, params Outcome[] outcomes) =>
        new(id, question, outcomes, null, Practice, topics);

    /// <summary>A sign judged by eye from the fouling of a passage or the size of a leak.</summary>
    public static Sign Graded(
        string id, string question, string[] topics, Parameter parameter, double[] cuts, double blur, params Outcome[] outcomes) =>
        new(id, question, outcomes, new PhysicalMargin(null, parameter, cuts, blur), Practice, topics);

    /// <summary>A sign judged by eye from something that can also be read.</summary>
    public static Sign Graded(
        string id, string question, string[] topics, Observable quantity, double[] cuts, double blur, params Outcome[] outcomes) =>
        new(id, question, outcomes, new PhysicalMargin(quantity, null, cuts, blur), Practice, topics);
}
