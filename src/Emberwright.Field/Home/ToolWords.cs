using Emberwright.Visits.Firm;

namespace Emberwright.Field.Home;

/// <summary>Kinds of instrument in words.</summary>
public static class ToolWords
{
    /// <summary>What is read with it.</summary>
    public static string Of(Tool tool) => tool switch
    {
        Tool.Gauge => T("ToolWords.pressure-gauge"),
        Tool.Meter => T("ToolWords.volts-and-ohms"),
        Tool.Analyser => T("ToolWords.flue-analyser"),
        Tool.CoMeter => T("ToolWords.co-in-the-room"),
        Tool.Thermometer => T("ToolWords.thermometer"),
    };
}
