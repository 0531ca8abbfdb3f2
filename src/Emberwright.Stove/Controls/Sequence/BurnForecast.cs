namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Runs the burn sequence of a virtual stove: its air, fire and heat drive its own board.</summary>
public static class BurnForecast
{
    /// <summary>Runs from cold.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="parameters">Its state of repair, indexed by <see cref="Parameter"/>.</param>
    /// <param name="scenario">What is wrong electrically or held open, and what is wanted.</param>
    /// <param name="durationS">Length of the run, s.</param>
    /// <exception cref="CircuitException">The pattern has no wiring, or a component is unknown.</exception>
    public static BurnRun Run(VirtualStove stove, ReadOnlySpan<double> parameters, BurnScenario scenario, double durationS)
    {
        var wiring = stove.Pattern.Wiring;
        var thermocouple = wiring.Components.OfType<Thermocouple>().FirstOrDefault();
        var drivers = new LaggedDrivers(new VirtualSteadyStove(stove, parameters, thermocouple?.HighFireV), Lags(stove));
        return BurnSequence.Run(wiring, Program(stove), drivers, With(scenario, parameters, wiring.Mains.NominalV), durationS);
    }

    private static SequenceLags Lags(VirtualStove stove)
    {
        var lags = stove.Pattern.Lags;
        return SequenceLags.Ordinary with
        {
            PotS = lags.BurnPotS,
            ExchangerS = lags.ExchangerS,
            ExhaustS = lags.ExhaustS,
            DiscS = lags.DiscS,
            WaterS = stove.Pattern.Heat.StreamIsWater ? 2 * lags.ExchangerS : double.PositiveInfinity,
        };
    }

    // Card before pattern: what this model's switch is rated at.
    private static BurnProgram Program(VirtualStove stove)
    {
        var program = stove.Pattern.Program;
        var levels = stove.Pattern.Levels;
        var closes = stove.Card?.SwitchClosesPa ?? stove.Pattern.Switch.ClosesPa;
        var opens = stove.Card?.SwitchOpensPa ?? stove.Pattern.Switch.OpensPa;
        return program with
        {
            LowFeedShare = levels[FireState.Low].FeedKgPerH / levels[FireState.High].FeedKgPerH,
            Draft = program.Draft is { } draft ? draft with { WeakestPa = opens } : null,
            Settings = [.. program.Settings.Select(s => s.Contact == ComponentIds.VacuumSwitch ? s with { ActsAt = closes, ReleasesAt = opens } : s)],
        };
    }

    private static BurnScenario With(BurnScenario scenario, ReadOnlySpan<double> parameters, double nominalV)
    {
        var ratios = scenario.SettingRatios;
        var threshold = parameters[(int)Parameter.SwitchThreshold];
        if (threshold != 0) ratios = ratios.SetItem(ComponentIds.VacuumSwitch, Math.Exp(threshold));
        return scenario with
        {
            HoseShare = scenario.HoseShare * Math.Exp(parameters[(int)Parameter.SensedPressure]),
            SettingRatios = ratios,
            SensorZeroPa = scenario.SensorZeroPa + parameters[(int)Parameter.SensorZero],
            ProofOffsetK = scenario.ProofOffsetK + parameters[(int)Parameter.ProofSensor],
            FuelArrives = scenario.FuelArrives * Math.Exp(parameters[(int)Parameter.Feed]),
            SupplyV = scenario.SupplyV ?? nominalV * Math.Exp(parameters[(int)Parameter.Supply]),
        };
    }
}
