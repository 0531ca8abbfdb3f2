using Emberwright.Stove.Air;

namespace Emberwright.Stove.Patterns;

/// <summary>Lists every number a stove is computed from, with its origin, for reports.</summary>
internal static class StoveInputs
{
    private static readonly Origin Entered = new(OriginKind.Entered, "entered for this site");
    private static readonly Origin Measured = new(OriginKind.Measured, "measured on site");
    private static readonly Origin Assumed = new(OriginKind.Pattern, "not said; the reference day, our choice, no source");
    private static readonly Origin FromCard = new(OriginKind.Derived, "fitted to the card's healthy values");

    public static IReadOnlyList<Input> Of(VirtualStove stove) =>
        [.. Site(stove), .. Vent(stove), .. Links(stove.Pattern), .. Rest(stove), .. Card(stove)];

    private static IEnumerable<Input> Site(VirtualStove stove)
    {
        var site = stove.Site;
        yield return new Input("altitude", site.AltitudeM, "m", Entered);
        yield return new Input("outdoor air", site.OutdoorC ?? ReferenceDay.OutdoorC, "°C", site.OutdoorC is null ? Assumed : Measured);
        yield return new Input("room air", site.RoomC ?? ReferenceDay.RoomC, "°C", site.RoomC is null ? Assumed : Measured);
        yield return new Input("wind at the terminal", site.WindMPerS ?? 0, "m/s", site.WindMPerS is null ? Assumed : Entered);
        yield return new Input("house against outdoors", site.HousePa ?? 0, "Pa", site.HousePa is null ? Assumed : Measured);
        yield return new Input("supply", site.SupplyV ?? stove.Pattern.SupplyV, "V",
            site.SupplyV is null ? new Origin(OriginKind.Pattern, "rated voltage") : Measured);
    }

    private static IEnumerable<Input> Vent(VirtualStove stove)
    {
        var run = stove.Site.Vent ?? stove.Pattern.Vent;
        var origin = stove.Site.Vent is null ? new Origin(OriginKind.Pattern, "usual vent of the pattern, from memory, no source") : Entered;
        yield return new Input("vent diameter", run.DiameterMm, "mm", origin);
        yield return new Input("vent horizontal", run.HorizontalM, "m", origin);
        yield return new Input("vent rise", run.VerticalM, "m", origin);
        yield return new Input("vent 90° elbows", run.Elbows90, "", origin);
        yield return new Input("vent 45° elbows", run.Elbows45, "", origin);
        yield return new Input("vent tees", run.Tees, "", origin);
    }

    private static IEnumerable<Input> Links(Pattern pattern)
    {
        foreach (var link in pattern.Air.Links)
        {
            switch (link)
            {
                case Opening o:
                    yield return new Input($"{o.Id}: free area", o.AreaM2 * 1e6, "mm²", o.Origin);
                    break;
                case Passage p:
                    yield return new Input($"{p.Id}: cross-section", p.AreaM2 * 1e6, "mm²", p.Origin);
                    break;
                case Crack c:
                    yield return new Input($"{c.Id}: leakage", c.Coefficient * 3600, "m³/(h·Paⁿ)", c.Origin);
                    break;
                case Blower b:
                    yield return new Input($"{b.Id}: shut-off pressure", b.Curve.ShutOffPa, "Pa", b.Origin);
                    break;
            }
        }
    }

    private static IEnumerable<Input> Rest(VirtualStove stove)
    {
        var pattern = stove.Pattern;
        yield return new Input("exchanger UA", pattern.Heat.ConductanceWPerK, "W/K", pattern.Heat.Origin);
        yield return new Input("warm stream", pattern.Heat.StreamWPerK, "W/K", pattern.Heat.Origin);
        if (pattern.Heat.RoomAir is { } blower)
        {
            yield return new Input("room-air blower: shut-off pressure", blower.Curve.ShutOffPa, "Pa", blower.Origin);
            yield return new Input("room-air blower: free area of its inlet", blower.InletM2 * 1e6, "mm²", blower.Origin);
            yield return new Input("room-air blower: free area of its grille", blower.GrilleM2 * 1e6, "mm²", blower.Origin);
        }

        yield return new Input("radiant share", 100 * pattern.Heat.RadiantShare, "%", pattern.Heat.Origin);
        yield return new Input("fuel moisture", 100 * pattern.Fuel.Fuel.Moisture, "%", pattern.Fuel.Origin);
        yield return new Input("feed on high", pattern.Levels[FireState.High].FeedKgPerH, "kg/h", pattern.Levels[FireState.High].Origin);
        yield return new Input("feed on low", pattern.Levels[FireState.Low].FeedKgPerH, "kg/h", pattern.Levels[FireState.Low].Origin);
        yield return new Input("vacuum switch closes", stove.Card?.SwitchClosesPa ?? pattern.Switch.ClosesPa, "Pa",
            stove.Card?.SwitchClosesPa is null ? pattern.Switch.Origin : Origin.OnCard);
        yield return new Input("vacuum switch opens", stove.Card?.SwitchOpensPa ?? pattern.Switch.OpensPa, "Pa",
            stove.Card?.SwitchOpensPa is null ? pattern.Switch.Origin : Origin.OnCard);
    }

    private static IEnumerable<Input> Card(VirtualStove stove)
    {
        if (stove.CardFit is not { } fit)
        {
            yield break;
        }

        for (var k = 0; k < fit.Offsets.Count; k++)
        {
            if (fit.Offsets[k] != 0)
            {
                yield return new Input($"{(Parameter)k} against the pattern", fit.Offsets[k], "ln", FromCard);
            }
        }
    }
}
