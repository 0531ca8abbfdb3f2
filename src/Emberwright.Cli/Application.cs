using Emberwright.Cli.Commands;
using Emberwright.Cli.Commands.FirmsBook;
using Emberwright.Visits;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>The commands, each with its examples.</summary>
internal static class Application
{
    public static int Run(string[] args, Terminal terminal)
    {
        var app = new CommandApp(new Registrar(terminal));
        app.Configure(config =>
        {
            config.SetApplicationName("emberwright");
            config.SetApplicationVersion(Engine.Version);
            config.UseStrictParsing();
            config.PropagateExceptions();
            config.ConfigureConsole(terminal.Console);
            config.AddCommand<ExpectCommand>("expect")
                .WithDescription("What a healthy stove of this kind should read here, today")
                .WithExample("expect", "demo/visits/healthy-service.jsonl")
                .WithExample("expect", "demo/visits/healthy-service.jsonl", "--units", "us", "--json");
            config.AddCommand<CompareCommand>("compare")
                .WithDescription("Each reading beside its healthy band")
                .WithExample("compare", "demo/visits/nest-in-the-cap.jsonl", "--units", "us");
            config.AddCommand<SuspectsCommand>("suspects")
                .WithDescription("What is probably wrong, how sure, and why")
                .WithExample("suspects", "demo/visits/ash-passages-full.jsonl")
                .WithExample("suspects", "demo/visits/ash-passages-full.jsonl", "--json");
            config.AddCommand<NextCommand>("next")
                .WithDescription("The check most worth doing now")
                .WithExample("next", "demo/visits/ash-passages-full.jsonl")
                .WithExample("next", "demo/visits/ash-passages-full.jsonl", "--depth", "2");
            config.AddCommand<CallCommand>("call")
                .WithDescription("The telephone call: emergency first, what to ask, tell, agree and bring")
                .WithExample("call", "demo/visits/nest-in-the-cap.jsonl");
            config.AddCommand<AttendCommand>("attend")
                .WithDescription("Work through a visit check by check; every line typed is written to the file at once")
                .WithExample("attend", "visit.jsonl", "--units", "us")
                .WithExample("attend", "new-visit.jsonl", "--begin", "damper-insert", "--author", "\"R. Sorrel\"");
            config.AddCommand<PractiseCommand>("practise")
                .WithDescription("Find and mend what is hidden in a virtual stove; at the end your way beside the planner's")
                .WithExample("practise", "--seed", "7", "--difficulty", "easy")
                .WithExample("practise", "--pattern", "hydronic", "--seed", "3", "--watch");
            config.AddCommand<ReportCommand>("report")
                .WithDescription("The report as PDF, and the papers beside it")
                .WithExample("report", "demo/visits/healthy-service.jsonl", "-o", "report.pdf")
                .WithExample("report", "demo/visits/healthy-service.jsonl", "--paper", "card", "-o", "card.pdf")
                .WithExample("report", "--batch", "demo/visits", "-o", "reports");
            config.AddCommand<VerifyCommand>("verify")
                .WithDescription("Whether a report and a visit file belong together, unchanged since signed")
                .WithExample("verify", "report.pdf", "visit.jsonl");
            config.AddCommand<ForecastCommand>("forecast")
                .WithDescription("How a stove fouls, area by area, and when it is due; from all its visits")
                .WithExample("forecast", "demo/visits/healthy-service.jsonl", "--day", "2026-10-01")
                .WithExample("forecast", "visits/heron-2/", "--fuel-per-year", "1.2t", "--json");
            config.AddCommand<DueCommand>("due")
                .WithDescription("Which stoves are due, from dates agreed and forecasts; letters, messages, a calendar file")
                .WithExample("due", "demo/visits/", "--until", "2027-06-30")
                .WithExample("due", "demo/visits/", "--spring-offer", "--letters", "letters/", "--ics", "due.ics");
            config.AddCommand<CardCommand>("card")
                .WithDescription("A visit's stove card as a file, or a card file put into a visit")
                .WithExample("card", "visit.jsonl", "-o", "hob-40.card.json")
                .WithExample("card", "visit.jsonl", "--take", "hob-40.card.json");
            config.AddBranch("firm", firm =>
            {
                firm.SetDescription("The firm's book: people, instruments, parts, customers; tables, learning, archive");
                firm.AddCommand<ShowCommand>("show").WithDescription("What the book says, what has run out, what to order")
                    .WithExample("firm", "show", "firm.jsonl", "--visits", "visits/");
                firm.AddCommand<ImportCommand>("import").WithDescription("Take a table in: whole, or not at all")
                    .WithExample("firm", "import", "firm.jsonl", "parts.csv", "--kind", "parts", "--dry-run");
                firm.AddCommand<ExportCommand>("export").WithDescription("Customers, stoves or parts as a table")
                    .WithExample("firm", "export", "firm.jsonl", "--kind", "parts");
                firm.AddCommand<UndoCommand>("undo").WithDescription("Withdraw the last entries; they stay in the file")
                    .WithExample("firm", "undo", "firm.jsonl", "1");
                firm.AddCommand<MergeCommand>("merge").WithDescription("Put another device's book into this one")
                    .WithExample("firm", "merge", "firm.jsonl", "from-phone.jsonl");
                firm.AddCommand<LearnCommand>("learn").WithDescription("What closed visits teach: causes, good parts renewed, comebacks, minutes")
                    .WithExample("firm", "learn", "visits/", "--json");
                firm.AddCommand<EraseCommand>("erase").WithDescription("Erase a person on request from the book and from their visits; seals still hold")
                    .WithExample("firm", "erase", "firm.jsonl", "visits/", "--name", "Ottilie Brandreth", "--asked", "by letter of 3 March");
                firm.AddCommand<WarrantyCommand>("warranty").WithDescription("What a maker asks for before it pays, as one file")
                    .WithExample("firm", "warranty", "demo/visits/healthy-service.jsonl", "-o", "claim.zip");
                firm.AddCommand<PackCommand>("pack").WithDescription("Book and visits as one archive")
                    .WithExample("firm", "pack", "visits/", "--book", "firm.jsonl", "-o", "all.zip");
                firm.AddCommand<UnpackCommand>("unpack").WithDescription("An archive as a folder of files")
                    .WithExample("firm", "unpack", "all.zip", "all/");
            });
            config.AddCommand<FlueCommand>("flue")
                .WithDescription("What an analyser's readings say about a fire; no file needed")
                .WithExample("flue", "--o2", "11.7", "--co", "190", "--flue", "163degC", "--feed", "1.7kg/h")
                .WithExample("flue", "--co2", "8", "--flue", "356degF", "--open", "efficiency");
            config.AddCommand<VentCommand>("vent")
                .WithDescription("Whether the vent run gives the stove its air: cold and hot, calm and windy")
                .WithExample("vent", "demo/visits/healthy-service.jsonl")
                .WithExample("vent", "demo/visits/healthy-service.jsonl", "--wind", "20mph", "--json");
            config.AddCommand<AirCommand>("air")
                .WithDescription("Pressures and flows of any network of openings, cracks, passages and blowers")
                .WithExample("air", "demo/networks/cold-stove.json")
                .WithExample("air", "demo/networks/house-with-fans.json", "--json");
            config.AddCommand<PatternsCommand>("patterns")
                .WithDescription("The families of construction the tool knows")
                .WithExample("patterns", "damper-insert")
                .WithExample("patterns", "underfed", "--svg", "underfed.svg");
            config.AddCommand<FaultsCommand>("faults")
                .WithDescription("What can be wrong, how often, and what cures it")
                .WithExample("faults", "--pattern", "damper-insert", "--area", "vent");
            config.AddCommand<MeterCommand>("meter")
                .WithDescription("What a meter would show on a pattern's wiring, sound or with a fault")
                .WithExample("meter", "damper-insert", "--state", "igniting", "--all")
                .WithExample("meter", "damper-insert", "--fault", "vacuum-switch:open", "--from", "vacuum-switch");
        });
        try
        {
            // The parser takes a lone hyphen for an option without a name.
            return app.Run([.. args.Select(a => a == "-" ? VisitSettings.StandardInput : a)]);
        }
        catch (CommandAppException e)
        {
            terminal.Error.WriteLine(e.Message);
            terminal.Error.WriteLine("emberwright --help lists the commands; emberwright COMMAND --help shows examples.");
            return ExitCodes.BadInput;
        }
    }
}
