// What does it cost to do one check or one repair, given what is prepared already?
// Cost = (own minutes + turning to it + unplugging + opening, once + warming up, once)·c + parts + P(not on the van)·second trip.
// Symbols: c one minute of the technician's time.
// Validity: any check and remedy of the catalogue.
// Assumptions: panels are opened and a fire is lit once, for whichever step comes first.
// Source: minutes from memory, no source.
// Worked: a reading of 3 minutes behind panels not yet open: 3 + 1 + 4 = 8 minutes.
using Emberwright.Diagnosis.Checks;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Minutes and costs of single steps, the same for planning and for practice.</summary>
internal static class Bill
{
    /// <summary>Bit of open panels.</summary>
    public const int Opening = 1;

    /// <summary>Bit of a fire that burns.</summary>
    public const int Fire = 2;

    /// <summary>Minutes to open panels.</summary>
    public const double OpenMinutes = 4;

    /// <summary>Minutes to a steady fire.</summary>
    public const double WarmUpMinutes = 20;

    private const double TurningMinutes = 1;
    private const double UnplugMinutes = 1;

    /// <summary>What a check needs prepared, as bits.</summary>
    public static int Preparations(Check check) =>
        (check.Needs.HasFlag(CheckNeeds.PanelsOff) ? Opening : 0) + (check.Needs.HasFlag(CheckNeeds.Burning) ? Fire : 0);

    /// <summary>Minutes of a check without its preparations.</summary>
    public static double Minutes(Check check) => check.Minutes + (check.Kind == CheckKind.Ask ? 0 : TurningMinutes) + (check.Needs.HasFlag(CheckNeeds.Unplugged) ? UnplugMinutes : 0);

    /// <summary>Minutes of a check with what is still to be prepared.</summary>
    public static double Minutes(Check check, int prepared)
    {
        var need = Preparations(check) & ~prepared;
        return Minutes(check) + ((need & Opening) != 0 ? OpenMinutes : 0) + ((need & Fire) != 0 ? WarmUpMinutes : 0);
    }
}
