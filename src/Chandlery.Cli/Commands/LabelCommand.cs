using System.CommandLine;
namespace Chandlery.Cli.Commands;
internal static class LabelCommand { public static Command Build() => new("label"); }
