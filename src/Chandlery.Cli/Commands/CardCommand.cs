using System.CommandLine;
namespace Chandlery.Cli.Commands;
internal static class CardCommand { public static Command Build() => new("card"); }
