using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Something that must be in the hand for a check, beyond screwdrivers and spanners.</summary>
public enum Tool
{
    /// <summary>Pressure gauge with its port kit: tee, flat probe, spare tee cap with a barb.</summary>
    PressureGauge,
    /// <summary>Multimeter with insulated probes.</summary>
    Multimeter,
    /// <summary>Clamp for AC amps.</summary>
    Clamp,
    /// <summary>Flue-gas analyser.</summary>
    FlueAnalyser,
    /// <summary>CO instrument for the room, zeroed outdoors.</summary>
    RoomMonoxide,
    /// <summary>Thermometer with a contact probe.</summary>
    Thermometer,
    /// <summary>Tachometer.</summary>
    Tachometer,
    /// <summary>Hand pump with a small gauge.</summary>
    HandPump,
    /// <summary>Smoke pencil.</summary>
    SmokePencil,
    /// <summary>Paper strips.</summary>
    Paper,
    /// <summary>Lamp and mirror.</summary>
    Lamp,
    /// <summary>Fused test lead on a residual-current device.</summary>
    TestLead,
    /// <summary>Scale and a bag to catch the feed.</summary>
    Scale,
    /// <summary>Hot plate.</summary>
    HotPlate,
    /// <summary>Capacitance range, and a resistor to discharge through.</summary>
    Capacitance,
    /// <summary>Ladder.</summary>
    Ladder,
    /// <summary>Vent brushes and rods.</summary>
    VentBrushes,
    /// <summary>Scrapers, brushes, new gaskets for what is opened.</summary>
    Brushes,
    /// <summary>Ash-rated vacuum, lidded metal can, mask.</summary>
    AshVacuum,
    /// <summary>Bleed key, hose and bucket.</summary>
    WaterKit,
    /// <summary>A bag of known dry pellets.</summary>
    DryBag,
    /// <summary>Tape.</summary>
    Tape,
}

/// <summary>Who may do a check.</summary>
public enum Skill
{
    /// <summary>The customer, guided by telephone.</summary>
    Customer,
    /// <summary>A stove technician.</summary>
    Technician,
    /// <summary>A technician who may work on live mains, as local code says.</summary>
    LiveWork,
}

/// <summary>What can hurt at a check.</summary>
[Flags]
public enum Risk
{
    /// <summary>Nothing beyond the ordinary.</summary>
    None = 0,
    /// <summary>Live mains within reach.</summary>
    Mains = 1,
    /// <summary>Hot surfaces or a burning fire.</summary>
    Heat = 2,
    /// <summary>Live ash and its dust.</summary>
    Ash = 4,
    /// <summary>Old fibre gaskets.</summary>
    Fibre = 8,
    /// <summary>A fall.</summary>
    Height = 16,
    /// <summary>Exhaust in the room.</summary>
    Monoxide = 32,
    /// <summary>Moving parts.</summary>
    MovingParts = 64,
    /// <summary>Hot water under pressure.</summary>
    Scald = 128,
    /// <summary>A safety device that could be left without effect, or a part that is easily ruined.</summary>
    LeftUnsafe = 256,
}

/// <summary>Which tools, skill and risk a check comes with. Common practice, no source.</summary>
internal static class CheckFacts
{
    private static readonly Dictionary<string, Tool[]> Special = new(StringComparer.Ordinal)
    {
        ["firebox-pressure"] = [Tool.PressureGauge],
        ["house-pressure"] = [Tool.PressureGauge],
        ["supply-voltage-loaded"] = [Tool.Multimeter],
        ["thermocouple-millivolts"] = [Tool.Multimeter],
        ["pressure-sensor-both"] = [Tool.PressureGauge],
        ["igniter-earth-ohms"] = [Tool.Multimeter],
        ["run-capacitor-capacitance"] = [Tool.Capacitance],
        ["speed-sensor-pulses"] = [Tool.Multimeter],
        ["vacuum-switch-pump"] = [Tool.HandPump],
        ["disc-hot-plate"] = [Tool.HotPlate, Tool.Thermometer, Tool.Multimeter],
        ["exhaust-probe-compare"] = [Tool.Thermometer],
        ["exhaust-probe-ohms"] = [Tool.Multimeter, Tool.Thermometer],
        ["water-probe-ohms"] = [Tool.Multimeter, Tool.Thermometer],
        ["compare-water-probe"] = [Tool.Thermometer],
        ["look-room-probe"] = [Tool.Thermometer],
        ["feel-return"] = [Tool.Thermometer],
        ["return-valve-temperatures"] = [Tool.Thermometer],
        ["hot-run-to-failure"] = [Tool.Multimeter, Tool.RoomMonoxide],
        ["room-monoxide"] = [Tool.RoomMonoxide],
        ["warm-air-monoxide"] = [Tool.RoomMonoxide],
        ["flange-monoxide"] = [Tool.RoomMonoxide],
        ["oxygen-fan-test"] = [Tool.FlueAnalyser],
        ["hood-on-test"] = [Tool.RoomMonoxide, Tool.PressureGauge],
        ["tape-hopper-seam"] = [Tool.Tape, Tool.PressureGauge],
        ["weigh-feed"] = [Tool.Scale],
        ["dry-bag-test"] = [Tool.DryBag],
        ["look-cap"] = [Tool.Lamp],
        ["look-exchanger-crack"] = [Tool.Lamp],
        ["look-exchanger"] = [Tool.Lamp, Tool.AshVacuum],
        ["look-igniter-passage"] = [Tool.Lamp],
        ["look-hose-bore"] = [Tool.Lamp],
        ["bleed-circuit"] = [Tool.WaterKit],
        ["hold-pressure"] = [Tool.WaterKit],
        ["press-vessel-valve"] = [Tool.WaterKit],
        ["free-pump-rotor"] = [Tool.WaterKit],
        ["clean-vent"] = [Tool.VentBrushes, Tool.Ladder, Tool.AshVacuum],
        ["clean-tee"] = [Tool.AshVacuum],
        [ActionList.FullService] = [Tool.VentBrushes, Tool.Ladder, Tool.Brushes, Tool.AshVacuum],
        ["join-thermostat"] = [Tool.TestLead],
    };

    private static readonly (string Caution, Risk Risk)[] Said =
    [
        (Cautions.Live, Risk.Mains), (Cautions.TestLead, Risk.Mains), (Cautions.IgniterLead, Risk.Heat), (Cautions.Ash, Risk.Ash), (Cautions.Fibre, Risk.Fibre),
        (Cautions.Ladder, Risk.Height), (Cautions.Hot, Risk.Heat), (Cautions.Monoxide, Risk.Monoxide), (Cautions.NoBridge, Risk.LeftUnsafe), (Cautions.Auger, Risk.MovingParts),
        (Cautions.HoseOff, Risk.LeftUnsafe), (Cautions.Water, Risk.Scald), (Cautions.FindWhy, Risk.LeftUnsafe),
    ];

    public static IReadOnlyList<Tool> ToolsOf(Check check)
    {
        if (Special.TryGetValue(check.Id, out var tools)) return tools;
        var own = new List<Tool>();
        own.AddRange(check.Reads.Select(r => Of(r.Measure)).Distinct());
        if (check.Cautions.Contains(Cautions.TestLead)) own.Add(Tool.TestLead);
        if (check.Cautions.Contains(Cautions.Ladder)) own.Add(Tool.Ladder);
        if (check.Id.StartsWith("smoke-pencil", StringComparison.Ordinal)) own.Add(Tool.SmokePencil);
        if (check.Id.StartsWith("paper-strip", StringComparison.Ordinal)) own.Add(Tool.Paper);
        if (check.Kind == CheckKind.Clean) own.Add(Tool.Brushes);
        if (check.Cautions.Contains(Cautions.Ash)) own.Add(Tool.AshVacuum);
        return own;
    }

    public static Skill SkillOf(Check check) => check.Needs == CheckNeeds.None ? Skill.Customer
        : check.Cautions.Contains(Cautions.Live) || check.Cautions.Contains(Cautions.TestLead) ? Skill.LiveWork
        : Skill.Technician;

    public static Risk RiskOf(Check check)
    {
        var risk = check.Needs.HasFlag(CheckNeeds.Burning) ? Risk.Heat : Risk.None;
        foreach (var (caution, of) in Said)
        {
            if (check.Cautions.Contains(caution)) risk |= of;
        }

        return risk;
    }

    private static Tool Of(Stove.Measure measure) => measure switch
    {
        Stove.Measure.Pressure => Tool.PressureGauge,
        Stove.Measure.Voltage or Stove.Measure.Resistance => Tool.Multimeter,
        Stove.Measure.Current => Tool.Clamp,
        Stove.Measure.Capacitance => Tool.Capacitance,
        Stove.Measure.Oxygen or Stove.Measure.CarbonDioxide or Stove.Measure.CarbonMonoxide => Tool.FlueAnalyser,
        Stove.Measure.Temperature => Tool.Thermometer,
        Stove.Measure.Speed => Tool.Tachometer,
        Stove.Measure.Feed => Tool.Scale,
        Stove.Measure.Duration or Stove.Measure.Flow => Tool.Multimeter,
    };
}

/// <summary>How tools are said.</summary>
public static class ToolWords
{
    /// <summary>The tool in the trade's words.</summary>
    /// <param name="tool">The tool.</param>
    public static string Of(Tool tool) => tool switch
    {
        Tool.PressureGauge => "pressure gauge with its port kit",
        Tool.Multimeter => "multimeter, insulated probes",
        Tool.Clamp => "clamp for amps",
        Tool.FlueAnalyser => "flue-gas analyser",
        Tool.RoomMonoxide => "CO instrument for the room",
        Tool.Thermometer => "contact thermometer",
        Tool.Tachometer => "tachometer",
        Tool.HandPump => "hand pump with gauge",
        Tool.SmokePencil => "smoke pencil",
        Tool.Paper => "paper strips",
        Tool.Lamp => "lamp and mirror",
        Tool.TestLead => "fused test lead on a residual-current device",
        Tool.Scale => "scale and catch bag",
        Tool.HotPlate => "hot plate",
        Tool.Capacitance => "capacitance meter",
        Tool.Ladder => "ladder",
        Tool.VentBrushes => "vent brushes and rods",
        Tool.Brushes => "scrapers, brushes, gaskets",
        Tool.AshVacuum => "ash-rated vacuum, metal can, mask",
        Tool.WaterKit => "bleed key, hose, bucket",
        Tool.DryBag => "a bag of known dry pellets",
        Tool.Tape => "tape",
    };
}
