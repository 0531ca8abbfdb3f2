using System.Text;
using Emberwright.Cli;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return Application.Run(args, Terminal.OfProcess());
