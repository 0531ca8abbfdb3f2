using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Practice;

/// <summary>How hard a practice stove is.</summary>
public enum PracticeLevel
{
    /// <summary>One frequent fault on a clean stove; the customer tells it as it is.</summary>
    Plain,
    /// <summary>One fault of any kind beside the usual dirt; the customer tells it mostly as it is.</summary>
    Ordinary,
    /// <summary>Two faults beside the usual dirt; the customer is vague and the readings scatter twice as much.</summary>
    Tangled,
}

/// <summary>What the levels come to in numbers. From memory, no source.</summary>
internal static class PracticeLevels
{
    private const double Frequent = 2;

    /// <summary>Share of faults that are dirt past its limit.</summary>
    public const double Dirt = 0.35;

    /// <summary>Number of faults.</summary>
    public static int Faults(this PracticeLevel level) => level == PracticeLevel.Tangled ? 2 : 1;

    /// <summary>Scatter of readings, as a multiple of an ordinary instrument's.</summary>
    public static double Scatter(this PracticeLevel level) => level == PracticeLevel.Tangled ? 2 : 1;

    /// <summary>How often the customer tells the stop as it was.</summary>
    public static double Telling(this PracticeLevel level) => level switch
    {
        PracticeLevel.Plain => 1,
        PracticeLevel.Ordinary => 0.85,
        PracticeLevel.Tangled => 0.6,
    };

    /// <summary>How often what no fault touches looks as usual; otherwise it is as it happens to be in a house with a stove.</summary>
    public static double Quiet(this PracticeLevel level) => level switch
    {
        PracticeLevel.Plain => 1,
        PracticeLevel.Ordinary => 0.85,
        PracticeLevel.Tangled => 0.6,
    };

    /// <summary>Mean dirt beside the fault, as a share of what the fuel burned would leave.</summary>
    public static double Background(this PracticeLevel level) => level == PracticeLevel.Plain ? 0.3 : 1;

    /// <summary>True when a fault may be hidden at this level. Advice to the owner is no repair and is not hidden.</summary>
    public static bool Allows(this PracticeLevel level, Fault fault) =>
        fault.Remedy.Kind != RemedyKind.Advise && (level != PracticeLevel.Plain || fault.BaseRatePercent >= Frequent);
}
