using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>What kind of quantity an unknown is; it decides its prior's form and how it enters a reading.</summary>
internal enum UnknownKind
{
    /// <summary>How the clean stove differs from the pattern or card; normal, shared by all epochs and visits.</summary>
    Baseline,
    /// <summary>Fouling since the last cleaning, −ln of the share left open; exponential, at least 0.</summary>
    Restriction,
    /// <summary>Any other parameter of the virtual stove; normal.</summary>
    Free,
    /// <summary>Relative error of the pressure gauge; normal, shared by all pressures.</summary>
    GaugeScale,
    /// <summary>What the model is persistently off by at one place and measure; normal, shared by all visits.</summary>
    Offset,
    /// <summary>How far a supposed fault shifts a parameter; normal, present only under that fault.</summary>
    Shift,
}

/// <summary>One continuous quantity that a diagnosis estimates together with all the others.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Parameter">The stove's parameter it belongs to, where there is one.</param>
/// <param name="Epoch">First epoch it holds in; an action that redraws it begins a new one.</param>
/// <param name="Mean">Prior mean; for an exponential, its mean.</param>
/// <param name="Sd">Prior standard deviation; for an exponential, its mean.</param>
/// <param name="Measure">Measure of an offset.</param>
/// <param name="Place">Place of an offset; of a shift, where it sits when that is not the passage itself.</param>
internal sealed record Unknown(
    UnknownKind Kind, Parameter? Parameter, int Epoch, double Mean, double Sd, Measure? Measure = null, string? Place = null)
{
    /// <summary>True when its prior is exponential and it cannot be negative.</summary>
    public bool IsExponential => Kind == UnknownKind.Restriction;

    /// <summary>True when it lasts from one visit to the next and so belongs to the appliance.</summary>
    public bool Persists => Kind is UnknownKind.Baseline or UnknownKind.Offset
        || Kind == UnknownKind.Free && Parameter is not (Stove.Parameter.Wind or Stove.Parameter.House or Stove.Parameter.Supply or Stove.Parameter.Moisture);

    /// <summary>Same quantity of the appliance, whatever the visit.</summary>
    public bool Matches(Unknown other) =>
        Kind == other.Kind && Parameter == other.Parameter && Measure == other.Measure && Place == other.Place;
}
