using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// A number of the model that evidence is compared with: something observable, or the state of a passage as one sees it
/// (without what the construction itself differs by). Exactly one of the two is set.
/// </summary>
/// <param name="Epoch">Epoch it belongs to.</param>
/// <param name="Observable">The observable, true value without the instrument's errors.</param>
/// <param name="Parameter">The parameter, without its baseline.</param>
internal readonly record struct Quantity(int Epoch, Observable? Observable, Parameter? Parameter)
{
    /// <summary>Something observable.</summary>
    public static Quantity Of(int epoch, Observable observable) => new(epoch, observable, null);

    /// <summary>The state of a passage, leak or setting.</summary>
    public static Quantity Of(int epoch, Parameter parameter) => new(epoch, null, parameter);
}
