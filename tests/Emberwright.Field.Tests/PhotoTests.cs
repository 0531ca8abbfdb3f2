using System.Buffers.Binary;
using System.Text;
using Emberwright.Field.Tests.Running;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Emberwright.Field.Tests;

/// <summary>A photo is turned upright, made smaller, and rid of where it was taken unless that is wanted.</summary>
public sealed class PhotoTests(Chromium chromium, Site site)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Upright_small_and_without_its_place_unless_wanted(bool wanted)
    {
        await using var phone = await chromium.Phone();
        var page = phone.Page;
        if (wanted)
        {
            await page.GotoAsync(site.Address + "/firm");
            await page.GetByLabel("Captions tell where a photo was taken").CheckAsync();
        }
        await page.Book(site.Address, "Service", "Camera Test");
        await page.WaitUntilConcluded();

        // Lying on its side as a phone's camera writes it: 2400 by 1200 pixels, its Exif saying "turn me", taken at 44.5 N, 72.25 W.
        var jpeg = Convert.FromBase64String(await page.EvaluateAsync<string>("""
            async () => {
                const canvas = new OffscreenCanvas(2400, 1200), context = canvas.getContext('2d');
                context.fillStyle = '#fff'; context.fillRect(0, 0, 2400, 1200);
                context.fillStyle = '#f00'; context.fillRect(0, 0, 1200, 1200);
                const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer());
                return btoa(bytes.reduce((text, byte) => text + String.fromCharCode(byte), ''));
            }
            """));
        await page.Locator(".dock input[type=file]").SetInputFilesAsync(new FilePayload { Name = "photo.jpg", MimeType = "image/jpeg", Buffer = WithExif(jpeg) });
        await Expect(page.Locator("#record h2 small")).Not.ToBeEmptyAsync();
        await Expect(page.GetByText("Photo kept")).ToBeVisibleAsync();

        var kept = Convert.FromBase64String(await page.EvaluateAsync<string>("""
            () => new Promise(resolve => {
                indexedDB.open('emberwright').onsuccess = opened => {
                    opened.target.result.transaction('pictures').objectStore('pictures').getAll().onsuccess = async all => {
                        const bytes = new Uint8Array(await all.target.result.find(kept => kept.type === 'image/jpeg').bytes.arrayBuffer());
                        resolve(btoa(bytes.reduce((text, byte) => text + String.fromCharCode(byte), '')));
                    };
                };
            })
            """));
        Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(kept), StringComparison.Ordinal);
        var (width, height) = Size(kept);
        Assert.Equal((800, 1600), (width, height));
        await page.GetByText("Everything recorded, in order").ClickAsync();
        var record = await page.Locator("#record").InnerTextAsync();
        Assert.Equal(wanted, record.Contains("taken at 44.50000, -72.25000", StringComparison.Ordinal));
        phone.HadNoTrouble();
    }

    // The frame header of a JPEG, marker C0 or C2: length, precision, height, width (ITU-T T.81).
    private static (int Width, int Height) Size(byte[] jpeg)
    {
        for (var at = 2; ; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2)))
            if (jpeg[at + 1] is 0xC0 or 0xC2)
                return (BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 7)), BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 5)));
    }

    // An Exif segment of two entries, orientation 6 and a GPS directory, put after the JPEG's first marker (CIPA DC-008).
    private static byte[] WithExif(byte[] jpeg)
    {
        var tiff = new byte[26 + 12 + 54 + 48];
        void U16(int at, ushort value) => BinaryPrimitives.WriteUInt16BigEndian(tiff.AsSpan(at), value);
        void U32(int at, uint value) => BinaryPrimitives.WriteUInt32BigEndian(tiff.AsSpan(at), value);
        void Entry(int at, ushort tag, ushort type, uint count) { U16(at, tag); U16(at + 2, type); U32(at + 4, count); }
        U16(0, 0x4D4D); U16(2, 42); U32(4, 8);
        U16(8, 2);
        Entry(10, 0x0112, 3, 1); U16(18, 6);
        Entry(22, 0x8825, 4, 1); U32(30, 38);
        U16(38, 4);
        Entry(40, 1, 2, 2); tiff[48] = (byte)'N';
        Entry(52, 2, 5, 3); U32(60, 92);
        Entry(64, 3, 2, 2); tiff[72] = (byte)'W';
        Entry(76, 4, 5, 3); U32(84, 116);
        foreach (var (at, value) in new[] { (92, 44u), (100, 30u), (108, 0u), (116, 72u), (124, 15u), (132, 0u) }) { U32(at, value); U32(at + 4, 1); }
        var segment = new byte[10 + tiff.Length];
        BinaryPrimitives.WriteUInt16BigEndian(segment, 0xFFE1);
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(8 + tiff.Length));
        "Exif"u8.CopyTo(segment.AsSpan(4));
        tiff.CopyTo(segment, 10);
        return [.. jpeg[..2], .. segment, .. jpeg[2..]];
    }
}
