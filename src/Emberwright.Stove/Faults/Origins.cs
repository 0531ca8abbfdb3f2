namespace Emberwright.Stove.Faults;

/// <summary>Where a number in the catalogue comes from.</summary>
internal static class Origins
{
    /// <summary>Known to the trade, not written down anywhere that could be cited.</summary>
    public const string Practice = "common practice, no source";

    /// <summary>An estimate remembered, not measured; closed visits are to replace it.</summary>
    public const string Memory = "from memory, no source";
}
