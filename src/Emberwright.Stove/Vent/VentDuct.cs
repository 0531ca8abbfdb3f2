// What resistance, rise and cooling surface does a vent run have?
//   Σζ = entry + elbows + tees + terminal;  L = horizontal + vertical;  rise = vertical;  UA = U·π·D·L
// ζ loss coefficients on the run's own velocity head, –; L, D, rise in m; U heat transmittance on the inside, W/(m²·K).
// Valid for round runs of 50 … 300 mm of one diameter. Assumes fittings far enough apart not to disturb each other.
// Source: 90° elbow 0.75, 45° elbow 0.35, tee used as an elbow 1.3: ASHRAE duct fitting tables for tight round fittings, from
// memory; entry 0.5 (flush in a wall, Idelchik); open end 1.0 (Crane TP-410, exit); caps and hoods 2.2 and 1.8, roughness
// 0.5 / 3 / 5 mm with soot, U 3 (listed double wall), 2 (inside a chimney or insulated): from memory, no source.
// Worked value: one tee and a vertical cap → 0.5 + 1.3 + 2.2 = 4.0.
namespace Emberwright.Stove.Vent;

/// <summary>A vent run reduced to what flow and heat need.</summary>
/// <param name="DiameterM">Inside diameter, m.</param>
/// <param name="LengthM">Developed length, m.</param>
/// <param name="RiseM">Height gained, m.</param>
/// <param name="RoughnessM">Wall roughness, m.</param>
/// <param name="Loss">Σζ, –.</param>
/// <param name="TransmittanceWPerM2K">U on the inside surface, W/(m²·K).</param>
/// <param name="IsIndoors">True when it runs in a chimney warmed by the house, so that its surroundings lie midway between room and outdoors.</param>
/// <param name="TerminalLoss">The terminal's part of Σζ, –.</param>
/// <param name="WindCoefficient">Pressure coefficient of the terminal, –.</param>
public sealed record VentDuct(
    double DiameterM, double LengthM, double RiseM, double RoughnessM, double Loss, double TransmittanceWPerM2K,
    bool IsIndoors, double TerminalLoss, double WindCoefficient)
{
    /// <summary>ζ of the step from the collar into the run.</summary>
    public const double EntryLoss = 0.5;

    /// <summary>ζ of a tight 90° elbow.</summary>
    public const double Elbow90Loss = 0.75;

    /// <summary>ζ of a 45° elbow.</summary>
    public const double Elbow45Loss = 0.35;

    /// <summary>ζ of a tee the gas turns in.</summary>
    public const double TeeLoss = 1.3;

    /// <summary>Cross-section, m².</summary>
    public double AreaM2 => Math.PI * DiameterM * DiameterM / 4;

    /// <summary>Heat conductance to the surroundings, W/K.</summary>
    public double ConductanceWPerK => TransmittanceWPerM2K * Math.PI * DiameterM * LengthM;

    /// <summary>Works out a run as the technician describes it.</summary>
    /// <exception cref="InputException">A number makes no sense, or terminal or lining is not known.</exception>
    public static VentDuct Of(VentRun run)
    {
        InputException.Require(run.DiameterMm, 50, 300, "vent diameter", "mm", "Give the inside diameter; 3 in is 76 mm, 4 in is 102 mm.");
        InputException.Require(run.HorizontalM, 0, 20, "vent horizontal length", "m", "Give the length along the run.");
        InputException.Require(run.VerticalM, -2, 20, "vent vertical length", "m", "Give the height from collar to terminal.");
        InputException.Require(run.Elbows90, 0, 20, "90° elbows", "", "Count the elbows of the run.");
        InputException.Require(run.Elbows45, 0, 20, "45° elbows", "", "Count the elbows of the run.");
        InputException.Require(run.Tees, 0, 10, "tees", "", "Count the tees of the run, the clean-out tee among them.");
        var (terminalLoss, wind) = run.Terminal switch
        {
            "vertical-cap" => (2.2, 0.0),
            "horizontal-hood" => (1.8, 0.3),
            "open" => (1.0, 0.0),
            _ => throw new InputException("vent terminal", $"\"{run.Terminal}\" is not known", "Use vertical-cap, horizontal-hood or open."),
        };
        var (roughness, indoors) = run.Lining switch
        {
            "rigid" => (0.0005, false),
            "flexible" => (0.003, true),
            "masonry" => (0.005, true),
            _ => throw new InputException("vent lining", $"\"{run.Lining}\" is not known", "Use rigid, flexible or masonry."),
        };
        return new VentDuct(
            run.DiameterMm / 1000,
            Math.Max(0.1, run.HorizontalM + Math.Abs(run.VerticalM)),
            run.VerticalM,
            roughness,
            EntryLoss + (run.Elbows90 * Elbow90Loss) + (run.Elbows45 * Elbow45Loss) + (run.Tees * TeeLoss) + terminalLoss,
            run.Insulated || indoors ? 2 : 3,
            indoors,
            terminalLoss,
            wind);
    }
}
