using System.CommandLine;
using Chandlery.Cli.Commands;
using Chandlery.Paper.Papers;

namespace Chandlery.Cli;

/// <summary>The commands and their options.</summary>
internal static class CommandTree
{
    public static RootCommand Build() => Build(PaperList.Own);

    /// <summary>The commands over a list of papers.</summary>
    public static RootCommand Build(PaperList papers)
    {
        var root = new RootCommand(
            "From a YAML blend to a lawful candle label: what is in the finished candle, what the law makes of it, and the papers to print. It helps; it does not replace local law or a competent person."
        )
        {
            WorkbenchCommand.Build(),
            AssessCommand.Build(),
            TraceCommand.Build(),
            SubstanceCommand.Build(),
            LabelCommand.Build(papers),
            DesignsCommand.Build(),
            SheetCommand.Build(),
            ArrangeCommand.Build(),
            MeasureCommand.Build(),
            CardCommand.Build(papers),
            SafetySheetCommand.Build(papers),
            DossierCommand.Build(papers),
            TechnicalFileCommand.Build(papers),
            ProcedureCommand.Build(papers),
            DutiesCommand.Build(),
            ListingCommand.Build(),
            TestsCommand.Build(),
            DispatchesCommand.Build(),
            RecallCommand.Build(),
            IncidentsCommand.Build(),
            WeighingCommand.Build(),
            PackagingCommand.Build(),
            SetsCommand.Build(),
            CeilingCommand.Build(),
            TrialsCommand.Build(),
            BlendCommand.Build(),
            UfiCommand.Build(),
            DraftCommand.Build(),
            BenchSheetCommand.Build(papers),
            WicksCommand.Build(papers),
            StoresCommand.Build(),
            CostCommand.Build(),
            CatalogueCommand.Build(),
            ChangesCommand.Build(),
            RegisterCommand.Build(papers),
            ExportCommand.Build(),
            ImportCommand.Build(),
            SchemasCommand.Build(),
            KindsCommand.Build(),
            StatementsCommand.Build(),
            NewCommand.Build(),
            VersionCommand.Build(),
            CompletionsCommand.Build(),
        };
        root.Add(ManualCommand.Build(root));
        root.Add(ReferenceCommand.Build(root, papers));
        PlainHelp.AddTo(root);
        Manners.AddTo(root);
        Offers.AddTo(root);
        UsageErrors.AddTo(root);
        root.SetAction((parse, _) => WorkbenchCommand.Run(parse, ".", 0, browser: true));
        return root;
    }
}
