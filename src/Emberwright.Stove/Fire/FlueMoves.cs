namespace Emberwright.Stove.Fire;

/// <summary>A flue gas measurement with one reading moved by its standard uncertainty.</summary>
internal static class FlueMoves
{
    /// <summary>One function per uncertain reading: takes +1 or −1, gives the measurement with that reading moved up or down.</summary>
    public static IEnumerable<Func<int, FlueOptions>> Of(FlueOptions o)
    {
        var u = o.Uncertainty;
        if (o.OxygenPercent is { } oxygen) yield return sign => o with { OxygenPercent = oxygen + sign * u.OxygenPercent };
        if (o.CarbonDioxidePercent is { } co2) yield return sign => o with { CarbonDioxidePercent = co2 + sign * u.CarbonDioxidePercent };
        if (o.CarbonMonoxidePpm is { } co)
        {
            var by = Math.Sqrt(Math.Pow(u.CarbonMonoxideRelative * co, 2) + Math.Pow(u.CarbonMonoxidePpm, 2));
            yield return sign => o with { CarbonMonoxidePpm = co + sign * by };
        }
        yield return sign => o with { FlueC = o.FlueC + sign * u.FlueK };
        yield return sign => o with { RoomC = o.RoomC + sign * u.RoomK };
        yield return sign => o with { HumidityPercent = o.HumidityPercent + sign * u.HumidityPercent };
        yield return sign => o with { Fuel = o.Fuel.WithMoisture(o.Fuel.Moisture + sign * u.Moisture) };
        var heat = HeatingValue.Of(o.Fuel);
        yield return sign => o with { Fuel = o.Fuel.WithGross(heat.GrossDryJPerKg * (1 + sign * heat.RelativeUncertainty)) };
        if (o.FuelKgPerHour is { } rate) yield return sign => o with { FuelKgPerHour = rate * (1 + sign * u.FuelRelative) };
    }
}
