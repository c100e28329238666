using System.CommandLine;
namespace Chandlery.Cli.Commands;
internal static class DossierCommand { public static Command Build() => new("dossier"); }
