using System.Text.RegularExpressions;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields that only the poison centres are told.</summary>
internal static partial class NotifiedShape
{
    private const string UfiForm = "^(UFI: ?)?([0-9AC-HJKMNP-Y]{4}-){3}[0-9AC-HJKMNP-Y]{4}$";
    private const string CategoryForm = "^[A-Z]+(-[A-Z0-9]+)+$";

    public static readonly TextField Ufi = new(
        "ufi",
        "The UFI on its safety data sheet, section 1.1; its check character is verified.",
        "the four blocks of four signs from section 1.1 of its sheet"
    )
    {
        Pattern = UfiForm,
    };

    public static readonly TextField SupplierTelephone = new(
        "supplierTelephone",
        "Its supplier's telephone number, for the poison centres.",
        "'+353 1 555 0100'"
    );

    public static readonly TextField SupplierEmail = new(
        "supplierEmail",
        "Its supplier's electronic address, for the poison centres.",
        "safety@supplier.example"
    );

    public static readonly TextField ProductCategory = new(
        "productCategory",
        "Code of the European product categorisation system, for the poison centres.",
        "the code as the portal lists it, in capitals with hyphens"
    )
    {
        Pattern = CategoryForm,
    };

    public static readonly IReadOnlyList<Field> Source = [Ufi, SupplierTelephone, SupplierEmail];

    public static MixtureSource ReadSource(Fields fields) =>
        new(ReadUfi(fields), fields.OptionalText(SupplierTelephone), fields.OptionalText(SupplierEmail));

    public static string? ReadProductCategory(Fields fields) =>
        Formed(
            fields,
            ProductCategory,
            CategoryCode(),
            "is no code of the product categorisation system: capitals and figures with hyphens"
        );

    private static string? ReadUfi(Fields fields) =>
        Formed(fields, Ufi, UfiSigns(), "is no UFI: four blocks of four signs, figures and capitals without B, I, L, O and Z") is { } text
            ? text.Replace("UFI:", "", StringComparison.Ordinal).Trim()
            : null;

    private static string? Formed(Fields fields, TextField field, Regex form, string wrong)
    {
        string? text = fields.OptionalText(field);
        if (text is not null && !form.IsMatch(text))
        {
            fields.Problems.Add(fields.PlaceOf(field), $"'{text}' {wrong}.", $"Write {field.Example}, or leave '{field.Key}' out.");
        }

        return text;
    }

    [GeneratedRegex(UfiForm, RegexOptions.CultureInvariant)]
    private static partial Regex UfiSigns();

    [GeneratedRegex(CategoryForm, RegexOptions.CultureInvariant)]
    private static partial Regex CategoryCode();
}
