using System.Text;

namespace LogBook.Cli;

/// <summary>Asks for a secret at the terminal without showing it.</summary>
internal static class HiddenPrompt
{
    /// <summary>Asks, and reads up to Enter; Backspace takes one character back, Escape all of them.</summary>
    /// <param name="question">Shown before.</param>
    /// <param name="screen">Where it is shown: not standard output, which may be a file.</param>
    /// <param name="next">The next key, not shown.</param>
    public static string Ask(string question, TextWriter screen, Func<ConsoleKeyInfo> next)
    {
        screen.Write(question);
        var typed = new StringBuilder();
        while (next() is var key && key.Key != ConsoleKey.Enter)
        {
            switch (key.Key)
            {
                case ConsoleKey.Escape:
                    typed.Clear();
                    break;
                case ConsoleKey.Backspace:
                    typed.Length = Math.Max(0, typed.Length - 1);
                    break;
                case var _ when !char.IsControl(key.KeyChar):
                    typed.Append(key.KeyChar);
                    break;
            }
        }

        screen.WriteLine();
        return typed.ToString();
    }
}
