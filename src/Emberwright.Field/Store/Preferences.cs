using System.Text.Json;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;

namespace Emberwright.Field.Store;

/// <summary>What this phone remembers beside the journals: who works with it, in which units. Loaded once at start.</summary>
public sealed class Preferences(JournalStore store)
{
    /// <summary>The units readings are typed and shown in.</summary>
    public UnitSystem Units { get; private set; } = UnitSystem.Us;

    /// <summary>The technician's name, written as author of each entry; empty until given.</summary>
    public string Author { get; private set; } = "";

    /// <summary>This device's id in the journal; made once and never shared with another device.</summary>
    public string Device { get; private set; } = "";

    /// <summary>True once the demo visits were laid out on this phone, even if removed since.</summary>
    public bool DemoSeen { get; private set; }

    /// <summary>The instruments of the firm's book, so that entering a reading does not wait for the book; of each kind the last one is taken.</summary>
    public IReadOnlyList<OwnInstrument> Instruments { get; private set; } = [];

    /// <summary>True when a photo's caption tells where it was taken; the pictures themselves never do.</summary>
    public bool KeepPlace { get; private set; }

    /// <summary>The firm's name on the papers; empty takes the visit's.</summary>
    public string FirmName { get; private set; } = "";

    /// <summary>Address and telephone of the firm.</summary>
    public string FirmContact { get; private set; } = "";

    /// <summary>The firm's colour as #RRGGBB; empty for none.</summary>
    public string FirmColour { get; private set; } = "";

    /// <summary>True when a logo is kept.</summary>
    public bool HasLogo => logo.Length > 0;

    private string logo = "";

    /// <summary>The letterhead of a paper.</summary>
    /// <param name="visits">The firm's name as the visit states it.</param>
    public Firm Letterhead(string? visits) => new(
        FirmName.Length > 0 ? FirmName : visits ?? "", FirmContact, logo.Length > 0 ? [.. Convert.FromBase64String(logo)] : [],
        FirmColour.Length == 7 && int.TryParse(FirmColour[1..], System.Globalization.NumberStyles.HexNumber, System.Globalization.CultureInfo.InvariantCulture, out var colour) ? colour : null);

    /// <summary>Changes name, address and colour.</summary>
    public async Task KeepFirm(string name, string contact, string colour)
    {
        await store.KeepSetting("firm-name", FirmName = name);
        await store.KeepSetting("firm-contact", FirmContact = contact);
        await store.KeepSetting("firm-colour", FirmColour = colour);
    }

    /// <summary>Changes the logo.</summary>
    public Task KeepLogo(byte[] file) => store.KeepSetting("firm-logo", logo = Convert.ToBase64String(file));

    /// <summary>Reads what is kept; makes the device's id on first use.</summary>
    /// <param name="browser">The language and region the browser is set to, such as <c>en-CA</c>.</param>
    public async Task Load(string? browser)
    {
        var kept = await store.Settings();
        Say.In(kept.GetValueOrDefault("language") ?? browser);
        Local.In(Region.Of(kept.GetValueOrDefault("region") ?? browser));
        Units = Enum.TryParse<UnitSystem>(kept.GetValueOrDefault("units"), out var units) ? units : Local.Region.Units;
        Author = kept.GetValueOrDefault("author", "");
        FirmName = kept.GetValueOrDefault("firm-name", "");
        FirmContact = kept.GetValueOrDefault("firm-contact", "");
        FirmColour = kept.GetValueOrDefault("firm-colour", "");
        logo = kept.GetValueOrDefault("firm-logo", "");
        if (kept.TryGetValue("instruments", out var own)) Instruments = JsonSerializer.Deserialize(own, StoreJson.Default.IReadOnlyListOwnInstrument) ?? [];
        KeepPlace = kept.GetValueOrDefault("keep-place") == "yes";
        DemoSeen = kept.ContainsKey("demo-seen");
        if (kept.TryGetValue("device", out var device)) Device = device;
        else await store.KeepSetting("device", Device = Guid.CreateVersion7().ToString());
    }

    /// <summary>Changes the units; they hold once they are kept.</summary>
    public async Task Use(UnitSystem units)
    {
        await store.KeepSetting("units", units.ToString());
        Units = units;
    }

    /// <summary>Changes language and region; they hold from the next start.</summary>
    public async Task Speak(string language, string region)
    {
        await store.KeepSetting("language", language);
        await store.KeepSetting("region", region);
    }

    /// <summary>Changes the technician's name.</summary>
    public Task Sign(string author) => store.KeepSetting("author", Author = author.Trim());

    /// <summary>Chooses whether captions tell where a photo was taken.</summary>
    public Task TellPlace(bool tell) => store.KeepSetting("keep-place", (KeepPlace = tell) ? "yes" : "no");

    /// <summary>Takes over the instruments of the firm's book.</summary>
    public Task Carry(IReadOnlyList<OwnInstrument> instruments) => instruments.SequenceEqual(Instruments) ? Task.CompletedTask : Keep(instruments);

    private Task Keep(IReadOnlyList<OwnInstrument> instruments) =>
        store.KeepSetting("instruments", JsonSerializer.Serialize(Instruments = instruments, StoreJson.Default.IReadOnlyListOwnInstrument));

    /// <summary>Remembers that the demo was laid out.</summary>
    public Task SawDemo()
    {
        DemoSeen = true;
        return store.KeepSetting("demo-seen", "yes");
    }
}
