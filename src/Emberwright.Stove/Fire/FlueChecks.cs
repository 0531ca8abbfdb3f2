namespace Emberwright.Stove.Fire;

/// <summary>Ranges of a flue gas measurement.</summary>
internal static class FlueChecks
{
    /// <summary>Refuses what cannot be computed.</summary>
    public static void Require(FlueOptions o)
    {
        if (o.OxygenPercent is null && o.CarbonDioxidePercent is null)
            throw new InputException("oxygen", "neither O2 nor CO2 is given", "Give one of them in percent by volume as the analyser shows it.");
        if (o.OxygenPercent is { } oxygen)
            InputException.Require(oxygen, 0, 20, "oxygen", "%", "Above 20 % it is nearly fresh air: check probe, hose and water trap for a leak, and whether the fire burns.");
        if (o.CarbonDioxidePercent is { } co2)
            InputException.Require(co2, 0.8, 21, "carbon dioxide", "%", "Below 0.8 % it is nearly fresh air; above 21 % no wood fuel reaches.");
        if (o.CarbonMonoxidePpm is { } co)
            InputException.Require(co, 0, 40_000, "carbon monoxide", "ppm", "Give ppm by volume as read, not corrected; beyond 40 000 ppm take the probe out.");
        if (double.IsNaN(o.FlueC)) throw new InputException("flue temperature", "it is missing", "Give it in °C, measured in the core of the flue gas.");
        InputException.Require(o.FlueC, 0, 600, "flue temperature", "°C", "Check the probe; above 260 °C stop the stove.");
        InputException.Require(o.RoomC, -30, 50, "room temperature", "°C", "Give the temperature of the combustion air.");
        InputException.Require(o.PressurePa, 50_000, 110_000, "pressure", "Pa", "Give absolute pressure at the site, not reduced to sea level; about 101 325 Pa at the sea, 11.5 Pa less per metre up.");
        InputException.Require(o.HumidityPercent, 0, 100, "relative humidity", "%", "Give percent; a heated room has 30 to 50.");
        if (o.FuelKgPerHour is { } rate)
            InputException.Require(rate, 0.05, 50, "fuel rate", "kg/h", "Weigh the feed over a stated time.");
        RequireNonNegative(o.Uncertainty);
    }

    private static void RequireNonNegative(FlueUncertainty u)
    {
        const string remedy = "Give a standard uncertainty, half of the instrument's tolerance as a rule.";
        InputException.Require(u.OxygenPercent, 0, 2, "uncertainty of oxygen", "%", remedy);
        InputException.Require(u.CarbonDioxidePercent, 0, 2, "uncertainty of carbon dioxide", "%", remedy);
        InputException.Require(u.CarbonMonoxideRelative, 0, 0.5, "uncertainty of carbon monoxide", "", remedy);
        InputException.Require(u.CarbonMonoxidePpm, 0, 1000, "uncertainty of carbon monoxide", "ppm", remedy);
        InputException.Require(u.FlueK, 0, 50, "uncertainty of the flue temperature", "K", remedy);
        InputException.Require(u.RoomK, 0, 20, "uncertainty of the room temperature", "K", remedy);
        InputException.Require(u.Moisture, 0, 0.2, "uncertainty of moisture", "", remedy);
        InputException.Require(u.HumidityPercent, 0, 50, "uncertainty of humidity", "%", remedy);
        InputException.Require(u.FuelRelative, 0, 0.5, "uncertainty of the fuel rate", "", remedy);
    }
}
