using System.Collections.Immutable;
using Emberwright.Stove.Controls;

namespace Emberwright.Stove.Patterns;

/// <summary>How this model's controls differ from its pattern's; null or empty takes the pattern's.</summary>
/// <param name="SupplyV">Rated mains voltage, V.</param>
/// <param name="FrequencyHz">Mains frequency, Hz.</param>
/// <param name="FeedOrder">Ids of all interlocks in series with the feed, in the order of the current.</param>
/// <param name="Contacts">Contacts that differ.</param>
public sealed record CardWiring(
    double? SupplyV, double? FrequencyHz, ImmutableArray<string> FeedOrder, ImmutableArray<CardContact> Contacts);

/// <summary>A disc or switch as its label or the diagram states it; null takes the pattern's.</summary>
/// <param name="Component">Id of the contact in the wiring.</param>
/// <param name="NormallyOpen">True when it stands open on the bench, cold and at rest.</param>
/// <param name="Reset">What closes it after a trip.</param>
/// <param name="ActsC">Temperature at which a disc or thermostat acts, °C.</param>
/// <param name="ReleasesC">Temperature at which it goes back, °C; below <paramref name="ActsC"/>.</param>
public sealed record CardContact(string Component, bool? NormallyOpen, ResetKind? Reset, double? ActsC, double? ReleasesC);

/// <summary>A setting of the board as this model leaves the works.</summary>
/// <param name="Name">Name or number, as the board shows it.</param>
/// <param name="Value">Its proper value.</param>
public sealed record CardParameter(string Name, string Value)
{
    /// <summary>What it changes; null when the card does not say.</summary>
    public ParameterEffect? Changes { get; init; }

    /// <summary>Change of that quantity for each step of the setting, %; negative where a higher number means less.</summary>
    public double PercentPerStep { get; init; } = 5;
}

/// <summary>What a setting of the board changes.</summary>
public enum ParameterEffect
{
    /// <summary>Fuel fed at every level.</summary>
    Feed,
    /// <summary>Combustion blower's speed at every level.</summary>
    BlowerSpeed,
}
