using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Tests.Law.Readers;

/// <summary>A record written out field by field, an indented line each, so that it can be read beside the file it comes from.</summary>
internal static class RecordText
{
    private static readonly Type[] Whole = [typeof(string), typeof(bool), typeof(char), typeof(DateOnly), typeof(Citation)];

    /// <summary>The fields of a record.</summary>
    public static string Of(object record)
    {
        var text = new StringBuilder();
        Fields(text, record, "");
        return text.ToString();
    }

    private static void Fields(StringBuilder text, object record, string indent)
    {
        foreach (PropertyInfo field in record.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (field.GetIndexParameters().Length == 0 && field.PropertyType != typeof(SubstanceList))
            {
                Value(text, field.Name, field.GetValue(record), indent);
            }
        }
    }

    private static void Value(StringBuilder text, string name, object? value, string indent)
    {
        string inner = indent + "  ";
        switch (value)
        {
            case not null when Short(value) is { } said:
                text.Append($"{indent}{name}: {said}".TrimEnd()).Append('\n');
                break;
            case null:
                text.Append($"{indent}{name}: none\n");
                break;
            case IDictionary map:
                text.Append($"{indent}{name}{(map.Count == 0 ? ": nothing" : "")}\n");
                foreach (DictionaryEntry entry in map)
                {
                    Value(text, $"{entry.Key}", entry.Value, inner);
                }

                break;
            case IEnumerable items:
                object[] all = [.. items.Cast<object>()];
                string[] shorts = [.. all.Select(Short).OfType<string>()];
                if (shorts.Length == all.Length)
                {
                    text.Append($"{indent}{name}: {(all.Length == 0 ? "nothing" : string.Join(" | ", shorts))}\n");
                    break;
                }

                for (int i = 0; i < all.Length; i++)
                {
                    Value(text, $"{name} {i + 1}", all[i], indent);
                }

                break;
            default:
                text.Append($"{indent}{name} ({value.GetType().Name})\n");
                Fields(text, value, inner);
                break;
        }
    }

    // A value that needs no line for each of its fields.
    private static string? Short(object value) =>
        value switch
        {
            DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            IFormattable number when value.GetType().IsPrimitive => number.ToString(null, CultureInfo.InvariantCulture),
            HazardCategory or StatementCode or Pictogram or SignalWord or Enum => $"{value}",
            _ when Whole.Contains(value.GetType()) => $"{value}",
            _ when value.GetType().GetProperty("Text") is { } written && value.GetType().Namespace != typeof(SheetSentence).Namespace =>
                $"{written.GetValue(value)}",
            _ when value.GetType().Namespace == "Chandlery.Core.Quantities" && value.GetType().GetProperty("Value") is { } amount =>
                $"{value.GetType().Name} {((double)amount.GetValue(value)!).ToString(CultureInfo.InvariantCulture)}",
            _ => null,
        };
}
