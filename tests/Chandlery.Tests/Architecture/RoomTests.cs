using System.Text.RegularExpressions;
using System.Xml.Linq;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Architecture;

/// <summary>The rooms in the order of the job: each knows only those before it.</summary>
public sealed partial class RoomTests
{
    // Core's rooms; a room may use those above it and itself.
    private static readonly string[] CoreRooms =
    [
        "Quantities",
        "Hazards",
        "Declared",
        "Composed",
        "Limits",
        "Law",
        "Classified",
        "Labelled",
        "Notified",
        "Judged",
        "Assessed",
        "Asked",
        "Making",
        "SafetyDataSheets",
        "SafetyFiles",
        "Schemas",
    ];

    // A block reads, measures and places itself, so its three rooms are one step; so are drawing and the PDF that is drawn,
    // and papers and proofs: a label is measured where it is made.
    private static readonly string[] PaperRooms =
    [
        "Fonts",
        "Scenes",
        "Drawing Pdf",
        "Symbols",
        "Barcodes",
        "Markup Layout Blocks",
        "Templates",
        "Shapes",
        "Designs",
        "Papers Proofs",
    ];

    private static readonly string[] IntakeRooms = ["Pictures", "Pages", "Wording", "Tables", "Drafts"];

    // Projects, each with those that it may refer to.
    private static readonly Dictionary<string, string[]> Projects = new()
    {
        ["Yaml"] = [],
        ["Core"] = ["Yaml"],
        ["Paper"] = ["Core"],
        ["Intake"] = ["Core", "Paper"],
        ["Files"] = ["Core", "Paper"],
        ["Register"] = ["Core", "Files"],
        ["Workbench"] = ["Core", "Paper", "Intake", "Register", "Files"],
        ["Cli"] = ["Core", "Paper", "Intake", "Files", "Register", "Workbench"],
    };

    [Fact]
    public void Rooms_know_only_those_before_them()
    {
        string[] wrong = [.. Wrong("Core", CoreRooms), .. Wrong("Paper", PaperRooms), .. Wrong("Intake", IntakeRooms)];
        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
    }

    [Fact]
    public void Every_room_has_its_place_in_the_order()
    {
        foreach ((string project, string[] rooms) in new[] { ("Core", CoreRooms), ("Paper", PaperRooms), ("Intake", IntakeRooms) })
        {
            IEnumerable<string> found = SourceFiles
                .All.Where(f => f.Path.StartsWith($"Chandlery.{project}/", StringComparison.Ordinal) && f.Path.Count(c => c == '/') > 1)
                .Select(f => f.Path.Split('/')[1])
                .Distinct();
            Assert.Equal(rooms.SelectMany(r => r.Split(' ')).Order(), found.Order());
        }
    }

    [Fact]
    public void Projects_refer_only_to_those_before_them()
    {
        string source = Path.Combine(TestLaw.Repository, "src");
        foreach (string project in Directory.EnumerateFiles(source, "*.csproj", SearchOption.AllDirectories))
        {
            string name = Path.GetFileNameWithoutExtension(project)["Chandlery.".Length..];
            IEnumerable<string> refers = XDocument
                .Load(project)
                .Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))["Chandlery.".Length..]);
            Assert.Empty(refers.Except(Projects[name]));
        }
    }

    // Whoever asks the law's parts beside the rooms that make them, each with the reason. The methods are named one by one, so
    // that a new one cannot be asked unseen either.
    private static readonly Dictionary<string, string[]> MayAskTheParts = new()
    {
        // It puts them together; a day's law is made with its resolver; an opened verdict counts what one method filled.
        ["Chandlery.Core/Judged/LawInForce.cs"] = ["SubstanceResolver", "Classifier", "LabelSelector", "MixtureIndex"],
        ["Chandlery.Core/Judged/LawOnADay.cs"] = ["SubstanceResolver"],
        ["Chandlery.Core/Judged/Verdict.cs"] = ["Classifier", "MixtureIndex", "LimitMethod", "AcuteToxicityMethod", "FlashMethod"],

        // It says no class: it finds the shares at which a method's own limits are met, and the verdict says what holds on both sides.
        ["Chandlery.Core/Asked/Ceilings/Crossings.cs"] = ["LimitMethod", "AcuteToxicityMethod", "ElicitationMethod"],
    };

    [Fact]
    public void Only_the_law_in_force_puts_resolver_classifier_and_selector_together()
    {
        string[] methods =
        [
            .. SourceFiles
                .All.Where(f => f.Path.StartsWith("Chandlery.Core/Classified/Methods/", StringComparison.Ordinal))
                .Select(f => Path.GetFileNameWithoutExtension(f.Path))
                .Where(name => name.EndsWith("Method", StringComparison.Ordinal)),
        ];
        Assert.True(methods.Length >= 4, string.Join(", ", methods));
        string[] parts = ["SubstanceResolver", "Classifier", "LabelSelector", "MixtureIndex", .. methods];
        IEnumerable<string> asked =
            from file in SourceFiles.All
            where !file.Path.StartsWith("Chandlery.Core/Classified/", StringComparison.Ordinal)
            from part in parts
            where !file.Path.EndsWith($"/{part}.cs", StringComparison.Ordinal)
            where SourceFiles.Code(file.Text).Any(l => Regex.IsMatch(l.Text, $@"\b{part}\b"))
            select $"{file.Path} asks {part}";
        IEnumerable<string> may = MayAskTheParts.SelectMany(m => m.Value.Select(part => $"{m.Key} asks {part}"));
        Assert.Equal(may.Order(StringComparer.Ordinal), asked.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_type_has_a_file_of_its_own()
    {
        IEnumerable<string> crowded =
            from file in SourceFiles.All
            let types = TopLevelType().Matches(file.Text).Select(m => m.Groups["name"].Value).Distinct().ToList()
            where types.Count > 1
            select $"{file.Path}: {string.Join(", ", types)}";
        string[] all = [.. crowded];
        Assert.True(all.Length == 0, string.Join('\n', all));
    }

    private static IEnumerable<string> Wrong(string project, string[] rooms) =>
        from file in SourceFiles.All
        where file.Path.StartsWith($"Chandlery.{project}/", StringComparison.Ordinal)
        let parts = file.Path.Split('/')
        where parts.Length > 2
        let room = StepOf(rooms, parts[1])
        from Match match in Regex.Matches(file.Text, $@"\bChandlery\.{project}\.(?<room>[A-Za-z]+)")
        let used = StepOf(rooms, match.Groups["room"].Value)
        where used > room
        select $"{file.Path} knows {match.Groups["room"].Value}";

    private static int StepOf(string[] rooms, string room) => Array.FindIndex(rooms, r => r.Split(' ').Contains(room));

    [GeneratedRegex(
        @"^(?:(?:public|internal|static|sealed|abstract|partial|readonly|ref) )*(?:record struct|record class|record|class|struct|enum|interface) (?<name>\w+)",
        RegexOptions.Multiline
    )]
    private static partial Regex TopLevelType();
}
