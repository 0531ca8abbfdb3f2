using Emberwright.Visits.SigningOff;

namespace Emberwright.Field.Visiting;

/// <summary>Where on the visit's page something that sign-off misses is entered.</summary>
public static class Anchors
{
    /// <summary>Id of the section.</summary>
    public static string Of(Section section) => section switch
    {
        Section.Call => "call",
        Section.MakeSafe => "safe",
        Section.AsFound => "found",
        Section.Areas => "areas",
        Section.Suspects => "suspects",
        Section.AsLeft => "left",
        Section.SignOff => "sign",
    };

    /// <summary>Its heading.</summary>
    public static string Name(Section section) => section switch
    {
        Section.Call => T("common.call"),
        Section.MakeSafe => T("common.make-safe"),
        Section.AsFound => T("common.as-found"),
        Section.Areas => T("common.areas"),
        Section.Suspects => T("common.suspects"),
        Section.AsLeft => T("common.as-left"),
        Section.SignOff => T("common.sign-off"),
    };
}
