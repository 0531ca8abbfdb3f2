using System.Collections.Frozen;

namespace Emberwright.Reports.Fonts;

/// <summary>
/// Joins a letter and a combining accent into the one character the font draws (canonical composition,
/// Unicode Standard Annex 15, for the letters in our cut). The runtime does not compose when it runs
/// without culture data, and phones type names in either form.
/// </summary>
internal static class Accents
{
    private static readonly FrozenDictionary<char, (string Letters, string Joined)> Table = new Dictionary<char, (string, string)>
    {
        ['\u0300'] = ("AEIOUaeiou", "ÀÈÌÒÙàèìòù"),
        ['\u0301'] = ("AEIOUYaeiouyCcLlNnRrSsZz", "ÁÉÍÓÚÝáéíóúýĆćĹĺŃńŔŕŚśŹź"),
        ['\u0302'] = ("AEIOUaeiouCcGgHhJjSsWwYy", "ÂÊÎÔÛâêîôûĈĉĜĝĤĥĴĵŜŝŴŵŶŷ"),
        ['\u0303'] = ("ANOanoIiUu", "ÃÑÕãñõĨĩŨũ"),
        ['\u0304'] = ("AaEeIiOoUu", "ĀāĒēĪīŌōŪū"),
        ['\u0306'] = ("AaEeGgIiOoUu", "ĂăĔĕĞğĬĭŎŏŬŭ"),
        ['\u0307'] = ("CcEeGgIZz", "ĊċĖėĠġİŻż"),
        ['\u0308'] = ("AEIOUaeiouyY", "ÄËÏÖÜäëïöüÿŸ"),
        ['\u030A'] = ("AaUu", "ÅåŮů"),
        ['\u030B'] = ("OoUu", "ŐőŰű"),
        ['\u030C'] = ("CcDdEeLlNnRrSsTtZz", "ČčĎďĚěĽľŇňŘřŠšŤťŽž"),
        ['\u0327'] = ("CcGgKkLlNnRrSsTt", "ÇçĢģĶķĻļŅņŖŗŞşŢţ"),
        ['\u0328'] = ("AaEeIiUu", "ĄąĘęĮįŲų"),
        ['\u0338'] = ("=", "≠"),
    }.ToFrozenDictionary();

    /// <summary>The composed character, or null when there is none.</summary>
    public static char? Join(char letter, char accent) =>
        Table.TryGetValue(accent, out var row) && row.Letters.IndexOf(letter) is >= 0 and var i ? row.Joined[i] : null;
}
