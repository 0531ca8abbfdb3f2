using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Cutaway;
using Emberwright.Reports.Pictures.Profile;
using Emberwright.Reports.Pictures.Timeline;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Tests;

/// <summary>Every picture the golden tests hold, by file name.</summary>
internal static class Gallery
{
    public static IReadOnlyDictionary<string, Func<Scene>> Scenes { get; } = new Dictionary<string, Func<Scene>>
    {
        ["profile-choked"] = () => PressureProfile.Draw(Samples.Choked),
        ["profile-choked-inwc"] = () => PressureProfile.Draw(Samples.Choked with { Unit = PressureUnit.InchOfWater, SecondUnit = PressureUnit.Pascal }),
        ["profile-cleaned"] = () => PressureProfile.Draw(Samples.Cleaned),
        ["profile-one-port"] = () => PressureProfile.Draw(Samples.OnePort),
        ["profile-nest"] = () => PressureProfile.Draw(Samples.NestInCap),
        ["profile-calm"] = () => PressureProfile.Draw(Samples.Calm),
        ["profile-wide"] = () => PressureProfile.Draw(Samples.Choked, 560),
        ["pair"] = () => PressureProfilePair.Draw(Samples.Choked, Samples.Cleaned),
        ["wiring-open"] = () => WiringPicture.Draw(Samples.FeedCircuit),
        ["wiring-plug-out"] = () => WiringPicture.Draw(Samples.PlugOut),
        ["wiring-230"] = () => WiringPicture.Draw(Samples.LongChain230),
        ["timeline"] = () => BurnTimeline.Draw(Samples.Start),
        ["cutaway-damper-insert"] = () => CutawayPicture.Draw(DamperInsert.Pattern),
        ["cutaway-thermocouple-freestanding"] = () => CutawayPicture.Draw(ThermocoupleFreestanding.Pattern),
        ["cutaway-underfed"] = () => CutawayPicture.Draw(Underfed.Pattern),
        ["cutaway-sealed-combustion"] = () => CutawayPicture.Draw(SealedCombustion.Pattern),
        ["cutaway-hydronic"] = () => CutawayPicture.Draw(Hydronic.Pattern),
        ["cutaway-multi-fuel-agitator"] = () => CutawayPicture.Draw(MultiFuelAgitator.Pattern),
    };
}
