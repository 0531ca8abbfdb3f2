using Emberwright.Stove;
using Emberwright.Trials;
using Emberwright.Trials.Calibration;
using Emberwright.Trials.Sampling;
using Emberwright.Trials.Speed;
using Emberwright.Trials.Visits;

try
{
    return args switch
    {
        ["calibration", .. var rest] => CalibrationCommand.Run(Options.Read(rest)),
        ["visits", .. var rest] => VisitCommand.Run(Options.Read(rest)),
        ["sampling", .. var rest] => SamplingCommand.Run(Options.Read(rest)),
        ["visit", .. var rest] => VisitLook.Run(Options.Read(rest)),
        ["speed", var stoves] => SpeedCommand.Run(int.Parse(stoves, System.Globalization.CultureInfo.InvariantCulture)),
        ["worst", .. var rest] => CalibrationCommand.Worst(Options.Read(rest)),
        _ => throw new InputException("command", args.Length == 0 ? "none was given" : $"'{args[0]}' is not known", Options.Usage),
    };
}
catch (InputException wrong)
{
    Console.Error.WriteLine(wrong.Message);
    return 2;
}
