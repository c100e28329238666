using System.Text.Json.Nodes;
using Chandlery.Cli.Commands;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Asked.Substances;
using Chandlery.Core.Asked.Trials;
using Chandlery.Core.Making;
using Chandlery.Core.Making.Stores;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.Schemas;

namespace Chandlery.Cli.Answers;

/// <summary>The JSON Schemas of what commands say to programs, made from the records that are written.</summary>
internal static class AnswerSchemas
{
    /// <summary>The schemas of declarations, assessments and answers by file name.</summary>
    public static IReadOnlyDictionary<string, string> AndAllOthers()
    {
        var files = new SortedDictionary<string, string>(JsonSchemas.All().ToDictionary(), StringComparer.Ordinal);
        foreach ((string command, JsonObject schema) in All())
        {
            files.Add(NameOf(command) + ".schema.json", AnswerSchema.Text($"What 'chandlery {command}' prints as JSON", schema));
        }

        return files;
    }

    /// <summary>Name of the schema of a command's answer.</summary>
    public static string NameOf(string command) => "answer-" + command.Replace(' ', '-');

    /// <summary>Commands with the schemas of their answers; <c>assess</c> has its own.</summary>
    public static IEnumerable<(string Command, JsonObject Schema)> All()
    {
        var own = new AnswerJson(AnswerSchema.Strict());
        var trials = new TrialJson(AnswerSchema.Strict());
        var compared = new ComparedJson(AnswerSchema.Strict());
        var stores = new StoresJson(AnswerSchema.Strict());
        var making = new MakingJson(AnswerSchema.Strict());
        var file = new SafetyFileJson(AnswerSchema.Strict());
        return new[]
        {
            ("arrange", AnswerSchema.Of(own.ArrangementAnswerArray)),
            ("bench-sheet", AnswerSchema.Of(making.BenchLineArray)),
            ("blend", AnswerSchema.Of(trials.BlendLineArray)),
            ("catalogue", AnswerSchema.Of(compared.CatalogueRowArray)),
            ("ceiling", AnswerSchema.Of(own.CeilingAnswerArray)),
            ("changes", AnswerSchema.Of(compared.CandleChangeArray)),
            ("cost", AnswerSchema.Of(stores.CostReportArray)),
            ("designs", AnswerSchema.Of(own.DesignAnswerArray)),
            ("dispatches list", AnswerSchema.Of(own.DispatchAnswerArray)),
            ("draft", AnswerSchema.Of(own.DraftAnswer)),
            ("duties", AnswerSchema.Of(file.DutyReportArray)),
            ("incidents", AnswerSchema.Of(file.IncidentReportLineArray)),
            ("kinds", AnswerSchema.Of(own.KindAnswerArray)),
            ("listing", AnswerSchema.Of(file.ListingReportArray)),
            ("measure", AnswerSchema.Of(own.InspectionArray)),
            ("packaging", AnswerSchema.Of(file.PackagingReport)),
            ("recall", AnswerSchema.Of(file.RecallReport)),
            ("register add", AnswerSchema.Of(own.AddedAnswerArray)),
            ("register find", AnswerSchema.Of(own.RegisterEntryArray)),
            ("register verify", AnswerSchema.Of(own.RegisterAnswer)),
            ("safety-sheet", AnswerSchema.Of(own.SafetySheetAnswerArray)),
            ("sets", AnswerSchema.Of(own.SetAnswerArray)),
            ("statements", AnswerSchema.Of(new StatementsJson(AnswerSchema.Strict()).DictionaryStringStatementLine)),
            ("stores", AnswerSchema.Of(stores.StoreReport)),
            ("substance", AnswerSchema.OneOrMany(new SubstanceJson(AnswerSchema.Strict()).SubstanceAnswerArray)),
            ("technical-file", AnswerSchema.Of(file.TechnicalFileReportArray)),
            ("tests", AnswerSchema.Of(file.TestReportArray)),
            ("trace", AnswerSchema.Of(own.TraceAnswerArray)),
            ("trials", AnswerSchema.Of(trials.TrialLineArray)),
            ("ufi check", AnswerSchema.Of(own.UfiAnswer)),
            ("ufi make", AnswerSchema.Of(own.UfiAnswer)),
            ("version", AnswerSchema.Of(own.VersionAnswer)),
            ("version memory", AnswerSchema.Of(new MemoryJson(AnswerSchema.Strict()).MemoryReportArray)),
            ("weighing", AnswerSchema.Of(file.WeighingLineArray)),
            ("wicks", AnswerSchema.Of(making.WickLineArray)),
        };
    }
}
