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
        Section.Call => "Call",
        Section.MakeSafe => "Make safe",
        Section.AsFound => "As found",
        Section.Areas => "Areas",
        Section.Suspects => "Suspects",
        Section.AsLeft => "As left",
        Section.SignOff => "Sign-off",
    };
}
