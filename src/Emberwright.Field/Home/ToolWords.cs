using Emberwright.Visits.Firm;

namespace Emberwright.Field.Home;

/// <summary>Kinds of instrument in words.</summary>
public static class ToolWords
{
    /// <summary>What is read with it.</summary>
    public static string Of(Tool tool) => tool switch
    {
        Tool.Gauge => "Pressure gauge",
        Tool.Meter => "Volts and ohms",
        Tool.Analyser => "Flue analyser",
        Tool.CoMeter => "CO in the room",
        Tool.Thermometer => "Thermometer",
    };
}
