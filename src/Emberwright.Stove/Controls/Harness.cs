namespace Emberwright.Stove.Controls;

/// <summary>
/// What the wires themselves add: insulation to earth and capacitance to the live conductor beside them.
/// They are what a meter sees on an open lead (a ghost voltage).
/// </summary>
/// <param name="InsulationOhm">Insulation of each lead to earth, Ω.</param>
/// <param name="ToLiveF">Capacitance of each lead to the live conductor beside it, F.</param>
/// <param name="ToEarthF">Capacitance of each lead to earth, F.</param>
public sealed record Harness(double InsulationOhm, double ToLiveF, double ToEarthF)
{
    /// <summary>
    /// About a metre of harness at 60 pF/m each way and sound insulation of 500 MΩ (common practice, no source).
    /// </summary>
    public static Harness Ordinary { get; } = new(500e6, 60e-12, 60e-12);
}
