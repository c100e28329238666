using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Law.Reading.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the law's data files: the folder tree <c>data/</c>, given as texts by path. Each kind of file has a reader of its own.</summary>
public sealed class LawReader
{
    private const string LanguageFolder = "languages";
    private const string StatementsFile = "statements.yaml";
    private const string SafetyFolder = "product-safety";
    private const string SheetFile = "safety-data-sheet.yaml";

    private readonly LawFiles files;
    private readonly IReadOnlyCollection<string> papers;
    private readonly Problems problems = new();
    private readonly Lock reading = new();
    private bool refusesAtOnce;
    private SubstanceShelf? substances; // once hazards and statements are known

    private LawReader(
        IReadOnlyDictionary<string, string> texts,
        IReadOnlyCollection<string> papers,
        Func<IReadOnlyDictionary<string, string>, string, ParsedFile> parse
    )
    {
        this.papers = papers;
        files = new LawFiles(texts, problems, parse);
        files.FindEditions();
    }

    /// <summary>Reads everything.</summary>
    /// <param name="texts">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="papers">Short names of the papers that are made; rows that name another are refused.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <returns>The lawbook, or null when there are problems.</returns>
    public static Lawbook? Read(IReadOnlyDictionary<string, string> texts, IReadOnlyCollection<string> papers, Problems problems) =>
        Read(texts, papers, problems, ParsedFile.Of);

    /// <summary>
    /// Reads what every run needs, and each edition and language when it is first asked for: for the program's own files, which
    /// its tests have read whole.
    /// </summary>
    /// <param name="texts">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="papers">Short names of the papers that are made; rows that name another are refused.</param>
    /// <param name="problems">Collects what is wrong with the part that is read at once.</param>
    /// <returns>
    /// The lawbook, or null when there are problems. An edition or a language that is wrong throws
    /// <see cref="InvalidDataException"/> when it is asked for.
    /// </returns>
    public static Lawbook? ReadWhenAsked(IReadOnlyDictionary<string, string> texts, IReadOnlyCollection<string> papers, Problems problems)
    {
        var reader = new LawReader(texts, papers, ParsedFile.Of);
        Lawbook? lawbook = reader.Open();
        problems.AddRange(reader.problems.Found);
        reader.refusesAtOnce = true;
        return problems.None ? lawbook : null;
    }

    /// <summary>Reads what every run needs and what is asked for then.</summary>
    /// <param name="texts">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="papers">Short names of the papers that are made; rows that name another are refused.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <param name="parse">Parses one of the texts, by its path.</param>
    /// <param name="ask">Asks for parts of the lawbook; null to ask for all.</param>
    internal static Lawbook? Read(
        IReadOnlyDictionary<string, string> texts,
        IReadOnlyCollection<string> papers,
        Problems problems,
        Func<IReadOnlyDictionary<string, string>, string, ParsedFile> parse,
        Action<Lawbook>? ask = null
    )
    {
        var reader = new LawReader(texts, papers, parse);
        Lawbook? lawbook = reader.Open();
        if (lawbook is not null)
        {
            (ask ?? reader.AskForAll)(lawbook);
        }

        problems.AddRange(reader.problems.Found);
        return problems.None ? lawbook : null;
    }

    private void AskForAll(Lawbook lawbook)
    {
        lawbook.Editions.ReadAll();
        lawbook.Languages.ReadAll();
        lawbook.SheetWords.ReadAll();
        lawbook.Safety.ReadAll();
        lawbook.Kinds.ReadAll();
        substances!.ReadAll();
    }

    // Null when statements or hazards are wrong: every other file refers to these two.
    private Lawbook? Open()
    {
        IReadOnlyCollection<string> statements = LanguageReader.KnownStatements(files);
        HazardVocabulary vocabulary = HazardsReader.Read(files.Open("law/hazards.yaml"), statements);
        if (!problems.None)
        {
            return null;
        }

        var codes = new LawCodes(vocabulary, statements, papers);
        substances = new SubstanceShelf(files, vocabulary, problems, reading);
        var sentences = new SheetSentenceReader(vocabulary, SheetWordsReader.Subsections(files));
        SheetSentences shared = sentences.ReadShared(files.Open("safety-data-sheet/sentences.yaml"));
        Shelf<Edition> editions = Shelf(
            files.Editions,
            id => new EditionReader(files, codes, substances.List, sentences, LanguageReader.WordKeys(files)).Read(id)
        );
        IReadOnlyList<string> languages = files.Folders(LanguageFolder, StatementsFile);
        (IReadOnlyList<Place> places, IReadOnlyDictionary<string, string> withoutTexts, IReadOnlyList<Written<PlaceCode>> placeCodes) =
            PlacesReader.Read(files.Open("places.yaml"), files.Editions, languages);
        var sheetWords = new SheetWordsReader(files, sentences.Texts, sentences.Labels, editions.ReadAll);
        return new Lawbook
        {
            Vocabulary = vocabulary,
            Editions = editions,
            Places = places,
            Substances = substances.List,
            Languages = Shelf(languages, folder => LanguageReader.Read(folder, files, statements)),
            WithoutTexts = withoutTexts,
            Burning = BurningReader.Read(files.Open("burning.yaml")),
            Kinds = Shelf(
                [
                    .. files
                        .Paths.Select(p => p.Split('/'))
                        .Where(p => p is [KindReader.Folder, _])
                        .Select(p => Path.GetFileNameWithoutExtension(p[1])),
                ],
                id => new KindReader(LanguageReader.WordKeys(files), codes).Read(id, files.Open($"{KindReader.Folder}/{id}.yaml"))
            ),
            SheetWords = Shelf(files.Folders(LanguageFolder, SheetFile), sheetWords.Read),
            SheetSentences = shared,
            Safety = OpenSafety(placeCodes),
        };
    }

    private ProductSafetyLaw OpenSafety(IReadOnlyList<Written<PlaceCode>> placesOfSale)
    {
        IReadOnlyList<string> laws =
        [
            .. files.Paths.Select(p => p.Split('/')).Where(p => p is [SafetyFolder, _, _]).Select(p => p[1]).Distinct(),
        ];
        IReadOnlyDictionary<string, string> places = SafetyPlacesReader.Read(files.Open($"{SafetyFolder}/places.yaml"), laws, placesOfSale);
        return new ProductSafetyLaw(places)
        {
            Markets = Safety("market.yaml", new MarketReader(places).Read),
            Listings = Safety("listing.yaml", ListingReader.Read),
            Recalls = Safety("recall.yaml", RecallReader.Read),
            Incidents = Safety("incidents.yaml", IncidentReader.Read),
            Quantities = Safety("quantity.yaml", QuantityReader.Read),
            Packagings = Safety("packaging.yaml", new MarkReader(places).Read),
            Duties = Safety("duties.yaml", new DutyReader(places).Read),
            Words = SafetyWords(SafetyWordsReader.FileName),
            AuthorityWords = SafetyWords(SafetyWordsReader.AuthorityFileName),
            ProcedureWords = SafetyWords(SafetyWordsReader.ProcedureFileName),
            File = new Lazy<FileRules>(OpenFile, LazyThreadSafetyMode.PublicationOnly),
        };
    }

    private Shelf<SafetyWords> SafetyWords(string file) =>
        Shelf(files.Folders(LanguageFolder, file), folder => SafetyWordsReader.Read(folder, file, files));

    // As for shelves: papers are made on several threads, and what they read shares the parsed files.
    private FileRules OpenFile()
    {
        lock (reading)
        {
            return FileRulesReader.Read(files.Open("technical-file/risks.yaml"));
        }
    }

    private Shelf<T> Safety<T>(string file, Func<Fields, T> read)
        where T : class => Shelf(files.Folders(SafetyFolder, file), id => read(files.Open($"{SafetyFolder}/{id}/{file}")));

    // Candles are assessed on several threads, what is read on the way shares the parsed files, and reading the words of a sheet
    // may read the editions: one lock for all.
    private Shelf<T> Shelf<T>(IReadOnlyList<string> names, Func<string, T> read)
        where T : class =>
        new(
            names,
            name =>
            {
                T thing = read(name);
                return refusesAtOnce && !problems.None ? throw new InvalidDataException(problems.Found[0].ToString()) : thing;
            },
            reading
        );
}
