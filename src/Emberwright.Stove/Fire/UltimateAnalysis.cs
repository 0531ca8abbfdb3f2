namespace Emberwright.Stove.Fire;

/// <summary>
/// What dry fuel consists of, as mass shares that sum to 1 (ultimate analysis, "dry basis": ash counted, moisture not).
/// It is not the ash-free analysis, nor the as-fired one.
/// </summary>
public sealed record UltimateAnalysis
{
    private const string Remedy = "Give the dry analysis with ash in it; when oxygen was not measured, take it by difference.";

    /// <summary>Takes shares of dry mass; a sum within 1 % of 1 is scaled to 1, as laboratories round each figure.</summary>
    /// <param name="carbon">C, 0.2 … 0.95.</param>
    /// <param name="hydrogen">H, 0 … 0.15.</param>
    /// <param name="oxygen">O, 0 … 0.6.</param>
    /// <param name="nitrogen">N, 0 … 0.1.</param>
    /// <param name="sulfur">S, 0 … 0.1.</param>
    /// <param name="ash">Ash, 0 … 0.5.</param>
    /// <exception cref="InputException">A share outside its range, or a sum further than 1 % from 1.</exception>
    public UltimateAnalysis(double carbon, double hydrogen, double oxygen, double nitrogen, double sulfur, double ash)
    {
        InputException.Require(carbon, 0.2, 0.95, "carbon", "of dry mass", Remedy);
        InputException.Require(hydrogen, 0, 0.15, "hydrogen", "of dry mass", Remedy);
        InputException.Require(oxygen, 0, 0.6, "oxygen in fuel", "of dry mass", Remedy);
        InputException.Require(nitrogen, 0, 0.1, "nitrogen", "of dry mass", Remedy);
        InputException.Require(sulfur, 0, 0.1, "sulfur", "of dry mass", Remedy);
        InputException.Require(ash, 0, 0.5, "ash", "of dry mass", Remedy);
        var sum = InputException.Require(carbon + hydrogen + oxygen + nitrogen + sulfur + ash, 0.99, 1.01, "sum of the analysis", "", Remedy);
        Carbon = carbon / sum;
        Hydrogen = hydrogen / sum;
        Oxygen = oxygen / sum;
        Nitrogen = nitrogen / sum;
        Sulfur = sulfur / sum;
        Ash = ash / sum;
    }

    /// <summary>Takes percent of dry mass with oxygen as the rest to 100.</summary>
    /// <exception cref="InputException">A share outside its range.</exception>
    public static UltimateAnalysis ByDifference(
        double carbonPercent, double hydrogenPercent, double nitrogenPercent, double sulfurPercent, double ashPercent) =>
        OfPercent(carbonPercent, hydrogenPercent,
            100 - carbonPercent - hydrogenPercent - nitrogenPercent - sulfurPercent - ashPercent,
            nitrogenPercent, sulfurPercent, ashPercent);

    /// <summary>Takes percent of dry mass, as laboratories print it.</summary>
    /// <exception cref="InputException">A share outside its range, or a sum outside 99 … 101 %.</exception>
    public static UltimateAnalysis OfPercent(
        double carbonPercent, double hydrogenPercent, double oxygenPercent, double nitrogenPercent, double sulfurPercent, double ashPercent) =>
        new(carbonPercent / 100, hydrogenPercent / 100, oxygenPercent / 100, nitrogenPercent / 100, sulfurPercent / 100, ashPercent / 100);

    /// <summary>C, share of dry mass.</summary>
    public double Carbon { get; }

    /// <summary>H, share of dry mass.</summary>
    public double Hydrogen { get; }

    /// <summary>O, share of dry mass.</summary>
    public double Oxygen { get; }

    /// <summary>N, share of dry mass.</summary>
    public double Nitrogen { get; }

    /// <summary>S, share of dry mass.</summary>
    public double Sulfur { get; }

    /// <summary>Ash, share of dry mass.</summary>
    public double Ash { get; }
}
