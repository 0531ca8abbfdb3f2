using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Profile;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.Pages;

/// <summary>The report's pictures, drawn once however often the pages are laid out.</summary>
/// <param name="Pair">Small profiles for the customer.</param>
/// <param name="Profiles">The profiles with axes and ledger, on one scale.</param>
/// <param name="ProfileTitles">Their titles.</param>
/// <param name="Areas">Areas before and after.</param>
/// <param name="Circuits">Circuits on which something was read.</param>
internal sealed record ReportPictures(
    Scene? Pair, ImmutableArray<Scene> Profiles, ImmutableArray<string> ProfileTitles, Scene? Areas, ImmutableArray<Scene> Circuits)
{
    public static ReportPictures Draw(ReportInput input)
    {
        var found = In(input.ProfileFound, input.Units);
        var left = In(input.ProfileLeft, input.Units);
        ImmutableArray<ProfileInput> both = [.. new[] { found, left }.OfType<ProfileInput>()];
        return new(
            both.IsEmpty ? null : PressureProfilePair.Draw(found, left, 340),
            both.IsEmpty ? [] : PressureProfile.DrawAlike(both, 374, tickHeight: 22, alone: false),
            [.. both.Select(b => b.Title)],
            input.Areas.IsEmpty ? null : RestrictionPicture.Draw(MostBlocked(input.Areas), 340),
            [.. input.Circuits.Select(c => WiringPicture.Draw(c, 374))]);
    }

    // The customer sees what mattered most; the page of figures has every area.
    private static IReadOnlyList<AreaChange> MostBlocked(ImmutableArray<AreaChange> areas)
    {
        var most = areas.OrderByDescending(a => RestrictionPicture.IsPast(a)).ThenByDescending(a => (a.Before ?? a.After)?.Likely ?? 0).Take(Shown).ToHashSet();
        return [.. areas.Where(most.Contains)];
    }

    /// <summary>Areas that the customer's page shows at most.</summary>
    public const int Shown = 5;

    /// <summary>True when a profile shows the last visit.</summary>
    public static bool HasLast(ReportInput input) => Both(input).Any(p => p.Stations.Any(s => s.LastPa is not null));

    /// <summary>What the dashed line supposes; null when there is none.</summary>
    public static string? Supposition(ReportInput input) =>
        Both(input).FirstOrDefault(p => p.Stations.Any(s => s.PredictedPa is not null))?.PredictionCaption;

    private static IEnumerable<ProfileInput> Both(ReportInput input) => new[] { input.ProfileFound, input.ProfileLeft }.OfType<ProfileInput>();

    // The left axis, tags and ledger in the unit the report is written in.
    private static ProfileInput? In(ProfileInput? input, UnitSystem system) => system == UnitSystem.Us && input is not null
        ? input with { Unit = PressureUnit.InchOfWater, SecondUnit = PressureUnit.Pascal }
        : input;
}
