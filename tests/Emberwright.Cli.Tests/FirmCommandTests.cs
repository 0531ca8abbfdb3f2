using System.IO.Compression;
using Xunit;

namespace Emberwright.Cli.Tests;

public class FirmCommandTests
{
    private readonly string folder = Directory.CreateTempSubdirectory().FullName;

    [Fact]
    public void A_table_is_looked_at_taken_in_whole_and_taken_back()
    {
        var (book, table) = (In("firm.jsonl"), In("parts.csv"));
        File.WriteAllText(table, "number,name,price,keep\nFO-1,rope,4.50,2\nFO-2,igniter,38,1\n");

        Assert.Contains("2 new", Run.Of("firm", "import", book, table, "--kind", "parts", "--dry-run").Out, StringComparison.Ordinal);
        Assert.False(File.Exists(book));
        Assert.Equal(ExitCodes.Ok, Run.Of("firm", "import", book, table, "--kind", "parts").Code);
        Assert.Contains("order 2 × rope FO-1", Run.Of("firm", "show", book).Out, StringComparison.Ordinal);
        Assert.Contains("0 new, 0 changed, 2 as they are", Run.Of("firm", "import", book, table, "--kind", "parts").Out, StringComparison.Ordinal);
        Assert.StartsWith("id,name,number", Run.Of("firm", "export", book, "--kind", "parts").Out, StringComparison.Ordinal);

        var before = File.ReadAllText(book);
        Assert.Equal(ExitCodes.Ok, Run.Of("firm", "undo", book, "2").Code);
        Assert.StartsWith(before, File.ReadAllText(book), StringComparison.Ordinal);
        Assert.Contains("0 parts", Run.Of("firm", "show", book).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_cell_is_named_and_nothing_is_written()
    {
        var (book, table) = (In("firm.jsonl"), In("parts.csv"));
        File.WriteAllText(table, "number,price\nFO-1,4.50\nFO-2,cheap\n");
        var run = Run.Of("firm", "import", book, table, "--kind", "parts");

        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("Line 3, column 2 (price)", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(book));
        Assert.Contains("customers, stoves, parts", Run.Of("firm", "import", book, table, "--kind", "bicycles").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Book_and_visits_go_into_one_archive_and_come_out_the_same()
    {
        var (book, table) = (In("firm.jsonl"), In("c.csv"));
        File.WriteAllText(table, "name,address\nOttilie Brandreth,14 Millrace Lane\n");
        Run.Of("firm", "import", book, table, "--kind", "customers");
        Assert.Equal(ExitCodes.Ok, Run.Of("firm", "pack", Run.Demo("healthy-service"), "--book", book, "-o", In("all.zip")).Code);
        Assert.Equal(ExitCodes.Ok, Run.Of("firm", "unpack", In("all.zip"), In("all")).Code);

        Assert.Equal(File.ReadAllBytes(book), File.ReadAllBytes(Path.Combine(folder, "all", "firm.jsonl")));
        var visit = Assert.Single(Directory.GetFiles(Path.Combine(folder, "all", "visits")));
        Assert.Equal(File.ReadAllBytes(Run.Demo("healthy-service")), File.ReadAllBytes(visit));
        Assert.Equal(ExitCodes.BadInput, Run.Of("firm", "unpack", table, In("none")).Code);
    }

    [Fact]
    public void A_person_is_erased_from_book_and_visits_and_nobody_else_is()
    {
        var (book, visits, table) = (In("firm.jsonl"), In("visits"), In("c.csv"));
        Directory.CreateDirectory(visits);
        foreach (var demo in Directory.GetFiles(Path.GetDirectoryName(Run.Demo("healthy-service"))!)) File.Copy(demo, Path.Combine(visits, Path.GetFileName(demo)));
        File.WriteAllText(table, "name,address\nOttilie Brandreth,\"14 Millrace Lane, county of Orrin\"\nDorcas Elderfield,3 Kiln Road\n");
        Run.Of("firm", "import", book, table, "--kind", "customers");
        Assert.Contains("Brandreth", All(), StringComparison.Ordinal);

        var run = Run.Of("firm", "erase", book, visits, "--name", "Ottilie Brandreth", "--asked", "by letter");
        Assert.Equal(ExitCodes.Ok, run.Code);
        Assert.All(new[] { "Ottilie", "Brandreth", "Millrace" }, word => Assert.DoesNotContain(word, All(), StringComparison.OrdinalIgnoreCase));
        Assert.Contains("Larkspur", All(), StringComparison.Ordinal);
        Assert.Contains("Elderfield", All(), StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Findings, Run.Of("firm", "erase", book, visits, "--name", "Nobody Atall").Code);
        Assert.Equal(ExitCodes.BadInput, Run.Of("firm", "erase", book, visits, "--name", " ").Code);

        string All() => string.Concat(new[] { book }.Concat(Directory.GetFiles(visits)).Select(File.ReadAllText));
    }

    [Fact]
    public void One_visit_leaves_an_archive_with_its_photos_and_no_others()
    {
        var (blobs, visit) = (In("blobs"), In("v.jsonl"));
        Directory.CreateDirectory(blobs);
        byte[] photo = [1, 2, 3], other = [4];
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(photo));
        File.WriteAllBytes(Path.Combine(blobs, hash), photo);
        File.WriteAllBytes(Path.Combine(blobs, Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(other))), other);
        File.WriteAllBytes(Path.Combine(blobs, "notes.txt"), other);
        File.WriteAllText(visit, $$$"""
            {"format":"emberwright-visit","version":1,"visit":"v-1"}
            {"at":"2026-01-14T09:30:00Z","author":"R. Sorrel","kind":"photo","body":{"blob":"sha256:{{{hash}}}"}}

            """);
        Assert.Equal(ExitCodes.Ok, Run.Of("firm", "pack", visit, Run.Demo("healthy-service"), "--blobs", blobs, "-o", In("all.zip")).Code);
        Assert.Equal(ExitCodes.Ok, Run.Of("firm", "unpack", In("all.zip"), In("one"), "--visit", "v-1").Code);
        Assert.Equal(File.ReadAllBytes(visit), File.ReadAllBytes(Assert.Single(Directory.GetFiles(In("one/visits")))));
        Assert.Equal(photo, File.ReadAllBytes(Assert.Single(Directory.GetFiles(In("one/blobs")))));
        Assert.Contains("v-1", Run.Of("firm", "unpack", In("all.zip"), In("two"), "--visit", "v-2").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_leaves_one_visit_and_goes_into_another_of_its_construction_only()
    {
        var (from, to, card) = (In("from.jsonl"), In("to.jsonl"), In("hob.card.json"));
        File.WriteAllText(from, """
            {"format":"emberwright-visit","version":1,"visit":"a"}
            {"at":"2026-01-14T09:30:00Z","author":"R. Sorrel","kind":"appliance","body":{"pattern":"damper-insert","card":{"format":"emberwright-card","version":1,"pattern":"damper-insert","name":"Hob 40","sensePort":"blower-inlet"}}}

            """);
        File.WriteAllText(to, """
            {"format":"emberwright-visit","version":1,"visit":"b"}
            {"at":"2026-01-14T09:30:00Z","author":"R. Sorrel","kind":"appliance","body":{"pattern":"damper-insert","serial":"7"}}

            """);
        Assert.Equal(ExitCodes.Ok, Run.Of("card", from, "-o", card).Code);
        Assert.Equal(ExitCodes.Findings, Run.Of("card", to).Code);
        var before = File.ReadAllText(to);
        Assert.Equal(ExitCodes.Ok, Run.Of("card", to, "--take", card).Code);
        Assert.StartsWith(before, File.ReadAllText(to), StringComparison.Ordinal);
        Assert.Contains("Hob 40", Run.Of("card", to).Out, StringComparison.Ordinal);

        File.WriteAllText(to, before.Replace("damper-insert", "underfed", StringComparison.Ordinal));
        Assert.Contains("underfed", Run.Of("card", to, "--take", card).Error, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, Run.Of("card", to, "--take", In("none.json")).Code);
    }

    [Fact]
    public void Books_of_two_firms_are_not_put_together()
    {
        foreach (var name in new[] { "a", "b" })
        {
            File.WriteAllText(In($"{name}.csv"), $"number\n{name}\n");
            Run.Of("firm", "import", In($"{name}.jsonl"), In($"{name}.csv"), "--kind", "parts");
        }

        var run = Run.Of("firm", "merge", In("a.jsonl"), In("b.jsonl"));
        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("another firm", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warranty_pack_holds_claim_readings_and_the_visit_and_says_what_it_lacks()
    {
        var run = Run.Of("firm", "warranty", Run.Demo("healthy-service"), "-o", In("claim.zip"));
        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.Contains("tag", run.Error, StringComparison.Ordinal);
        using var zip = ZipFile.OpenRead(In("claim.zip"));
        using var claim = new StreamReader(zip.GetEntry("claim.txt")!.Open());
        Assert.Contains("FO-40-20871", claim.ReadToEnd(), StringComparison.Ordinal);
        Assert.NotNull(zip.GetEntry("readings.csv"));
    }

    private string In(string name) => Path.Combine(folder, name);
}
