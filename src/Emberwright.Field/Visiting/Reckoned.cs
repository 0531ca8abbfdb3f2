using Emberwright.Diagnosis;

namespace Emberwright.Field.Visiting;

/// <summary>What the engine concludes from a visit as it stands.</summary>
/// <param name="Beliefs">Suspects, bands, stops.</param>
/// <param name="Next">The next check.</param>
/// <param name="Whole">False for the first conclusion, which weighs one fault at a time.</param>
public sealed record Reckoned(Beliefs Beliefs, NextCheck Next, bool Whole);
