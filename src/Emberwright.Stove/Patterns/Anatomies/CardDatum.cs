namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>Something a stove card can hold, and how to learn it on site when it is not known.</summary>
/// <param name="Member">Member of the card file, e.g. <c>vacuumSwitch.closes</c>.</param>
/// <param name="What">What it is, in the trade's words.</param>
/// <param name="Look">Where to look.</param>
/// <param name="Measure">How to measure or prove it; empty when it can only be read.</param>
/// <param name="UntilThen">What the tool computes with meanwhile.</param>
/// <param name="Origin">Where this comes from.</param>
public sealed record CardDatum(string Member, string What, string Look, string Measure, string UntilThen, Origin Origin);
