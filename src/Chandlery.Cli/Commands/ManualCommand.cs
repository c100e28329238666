using System.CommandLine;
using System.Text;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery manual</c>: the commands as a manual page, made from the commands themselves.</summary>
internal static class ManualCommand
{
    private const int Width = 78;

    public static Command Build(RootCommand root)
    {
        var roff = new Option<bool>("--roff") { Description = "In the format of 'man': chandlery manual --roff > chandlery.1" };
        var command = new Command("manual", "Print the manual page: every command with its arguments and options, exit codes and files.")
        {
            roff,
        };
        command.SetAction(parse =>
        {
            IPage page = parse.GetValue(roff) ? new RoffPage() : new PlainPage();
            Write(page, root);
            parse.InvocationConfiguration.Output.Write(page.ToString());
        });
        return command;
    }

    /// <summary>The manual as plain text, for the reference.</summary>
    public static string Plain(RootCommand root)
    {
        var page = new PlainPage();
        Write(page, root);
        return page.ToString()!;
    }

    private static void Write(IPage page, RootCommand root)
    {
        page.Section("NAME");
        page.Text("chandlery - from a YAML blend to a lawful candle label");
        page.Section("SYNOPSIS");
        page.Text("chandlery [command] [arguments] [options]");
        page.Section("DESCRIPTION");
        page.Text(root.Description ?? "");
        page.Text("Without a command it opens the workbench on the present folder.");
        page.Section("COMMANDS");
        foreach (Command command in root.Subcommands)
        {
            Write(page, command, "");
        }

        page.Section("EXIT STATUS");
        page.Entry("0", "Fine.");
        page.Entry("1", "Something stops the sale of a candle, a paper that is due is missing, or the register does not hold together.");
        page.Entry("2", "The input is wrong; nothing was written.");
        page.Entry("3", "The program itself is at fault; its message says what to report.");
        page.Section("FILES");
        page.Entry("maker.yaml", "Marks a maker's folder; the other declarations are found below it by their names.");
        page.Entry("register.sqlite", "The register of a maker's folder.");
        page.Section("CAUTION");
        page.Text("The program helps; it does not replace local law, its authorities, or a competent person.");
    }

    private static void Write(IPage page, Command command, string above)
    {
        string name = $"{above}{command.Name}";
        string arguments = string.Concat(
            command.Arguments.Select(a =>
                a.Arity.MinimumNumberOfValues == 0 ? $" [{a.Name}]"
                : a.Arity.MaximumNumberOfValues > 1 ? $" <{a.Name}>..."
                : $" <{a.Name}>"
            )
        );
        page.Command($"{name}{arguments}", command.Description ?? "");
        foreach (Argument argument in command.Arguments)
        {
            page.Option($"<{argument.Name}>", argument.Description ?? "");
        }

        foreach (Option option in command.Options.Where(o => !o.Hidden && o.Name is not "--help"))
        {
            page.Option(option.Name, option.Description ?? "");
        }

        if (Examples.Of(command) is { } example)
        {
            page.Option("Example:", example);
        }

        foreach (Command below in command.Subcommands)
        {
            Write(page, below, name + " ");
        }
    }

    /// <summary>A page in one format.</summary>
    private interface IPage
    {
        void Section(string title);

        void Text(string text);

        void Command(string synopsis, string description);

        void Option(string name, string description);

        void Entry(string name, string description);
    }

    private sealed class PlainPage : IPage
    {
        private readonly StringBuilder page = new();

        public void Section(string title) => page.Append(page.Length > 0 ? "\n" : "").Append(title).Append('\n');

        public void Text(string text) => Wrap(text, 4);

        public void Command(string synopsis, string description)
        {
            page.Append('\n').Append("    ").Append(synopsis).Append('\n');
            Wrap(description, 8);
        }

        public void Option(string name, string description)
        {
            page.Append("        ").Append(name).Append('\n');
            Wrap(description, 12);
        }

        public void Entry(string name, string description)
        {
            page.Append("    ").Append(name).Append('\n');
            Wrap(description, 8);
        }

        public override string ToString() => page.ToString();

        private void Wrap(string text, int indent)
        {
            string lead = new(' ', indent);
            string line = "";
            foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (line.Length > 0 && indent + line.Length + 1 + word.Length > Width)
                {
                    page.Append(lead).Append(line).Append('\n');
                    line = "";
                }

                line = line.Length == 0 ? word : line + " " + word;
            }

            page.Append(lead).Append(line).Append('\n');
        }
    }

    private sealed class RoffPage : IPage
    {
        private readonly StringBuilder page = new(".TH CHANDLERY 1\n");

        public void Section(string title) => page.Append(".SH ").Append(title).Append('\n');

        public void Text(string text) => page.Append(".PP\n").Append(Escaped(text)).Append('\n');

        public void Command(string synopsis, string description) =>
            page.Append(".SS ").Append(Escaped(synopsis)).Append('\n').Append(Escaped(description)).Append('\n');

        public void Option(string name, string description) => Entry(name, description);

        public void Entry(string name, string description) =>
            page.Append(".TP\n.B ").Append(Escaped(name)).Append('\n').Append(Escaped(description)).Append('\n');

        public override string ToString() => page.ToString();

        private static string Escaped(string text)
        {
            string plain = text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
            return plain is ['.' or '\'', ..] ? "\\&" + plain : plain;
        }
    }
}
