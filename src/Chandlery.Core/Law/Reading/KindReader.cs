using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>kinds/&lt;kind&gt;.yaml</c>: what must be declared of a kind of product and what is said of its use.</summary>
/// <param name="words">Keys of the words and messages that every language has.</param>
/// <param name="codes">Codes that refer to something else.</param>
internal sealed class KindReader(IReadOnlyCollection<string> words, LawCodes codes)
{
    /// <summary>The folder of the kinds.</summary>
    public const string Folder = "kinds";

    private const string Asked = "asked";

    /// <summary>A kind.</summary>
    /// <param name="id">Its file name without ending.</param>
    /// <param name="fields">Its file.</param>
    public ProductKind Read(string id, Fields fields)
    {
        string category = fields.Text("ifraCategory", "12");
        Dictionary<MessageList, IReadOnlyList<string>> messages = Enum.GetValues<MessageList>()
            .ToDictionary(l => l, l => Keys(fields, EnumName.Of(l)));
        IReadOnlyList<string> listing = Keys(fields, "listing");
        var kind = new ProductKind
        {
            Id = id,
            Name = fields.Text("name", "pillar candle"),
            State = fields.Enumeration("state", PhysicalState.Solid),
            Burns = fields.Flag("burns"),
            UsedIn = fields.Enumerations<CandleUse>("usedIn"),
            Needs = fields.Enumerations<KindPart>("needs"),
            MayHave = fields.Enumerations<KindPart>("mayHave"),
            IfraCategory = category == Asked ? null : category,
            Called = ReadNames(fields.Group("called", "{ scented: scentedCandle, outdoors: outdoorCandle, plain: plainCandle }")),
            Title = Known(fields, fields.Text("title", "cardTitle"), fields.PlaceOf("title")),
            Words = ReadWords(fields, "words", ["candles", "candle"], "reed diffuser"),
            Parts = ReadWords(fields, "parts", ["wax", "melt"], "base"),
            OnlyWhen = ReadConditions(fields),
            Messages = messages,
            Listing = listing.Count > 0 ? listing : [.. Cards.SelectMany(l => messages[l]).Distinct()],
            WithoutPapers = codes.Papers(fields, "withoutPapers"),
            Source = fields.Text("source", "common practice, no source"),
        };
        fields.Done();
        return kind;
    }

    private static readonly MessageList[] Cards =
    [
        MessageList.First,
        MessageList.Before,
        MessageList.During,
        MessageList.After,
        MessageList.Trouble,
    ];

    private KindNames ReadNames(Fields fields)
    {
        string Key(string key) => Known(fields, fields.Text(key, "scentedCandle"), fields.PlaceOf(key));
        var names = new KindNames(Key("scented"), Key("outdoors"), Key("plain"));
        fields.Done();
        return names;
    }

    private static LocalWords ReadWords(Fields fields, string key, string[] ours, string example)
    {
        if (fields.OptionalGroup(key) is not { } group)
        {
            return LocalWords.None;
        }

        var words = new Dictionary<string, string>();
        foreach (string word in ours)
        {
            words[word] = group.Text(word, example);
        }

        group.Done();
        return new LocalWords(words);
    }

    private Dictionary<string, MessageWhen> ReadConditions(Fields fields)
    {
        var conditions = new Dictionary<string, MessageWhen>();
        if (fields.OptionalGroup("onlyWhen") is { } group)
        {
            foreach (string key in words.Where(group.Has))
            {
                conditions[key] = group.Enumeration(key, MessageWhen.Indoor);
            }

            group.Done();
        }

        return conditions;
    }

    private IReadOnlyList<string> Keys(Fields fields, string list) =>
        [.. fields.List(list).Select(item => Known(fields, (item as YamlScalar)?.Text ?? "?", item.Place))];

    private string Known(Fields fields, string key, TextPlace place)
    {
        if (key.Length > 0 && !words.Contains(key))
        {
            string near = Suggestion.DidYouMean(key, words);
            fields.Problems.Add(place, $"There is no message '{key}'.", near);
        }

        return key;
    }
}
