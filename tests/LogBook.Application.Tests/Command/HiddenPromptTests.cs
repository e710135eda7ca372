using LogBook.Cli;

namespace LogBook.Application.Tests.Command;

public class HiddenPromptTests
{
    [Theory]
    [InlineData("under the old weir\r", "under the old weir")]
    [InlineData("weir\b\b\bater\r", "water")]
    [InlineData("\b\bweir\r", "weir")]
    [InlineData("wrong\u001bweir\r", "weir")]
    [InlineData("we\u0001ir\r", "weir")]
    [InlineData("contraseña única\r", "contraseña única")]
    public void Ask_Keys_AreTakenAndNeverShown(string keys, string expected)
    {
        using var screen = new StringWriter();
        using var typed = keys.Select(Key).GetEnumerator();

        var answer = HiddenPrompt.Ask("Password: ", screen, () => typed.MoveNext() ? typed.Current : throw new InvalidOperationException("Read on after Enter."));

        Assert.Equal(expected, answer);
        Assert.Equal("Password: " + Environment.NewLine, screen.ToString());
    }

    private static ConsoleKeyInfo Key(char character) => new(
        character,
        character switch { '\r' => ConsoleKey.Enter, '\b' => ConsoleKey.Backspace, '\u001b' => ConsoleKey.Escape, _ => ConsoleKey.NoName },
        shift: false,
        alt: false,
        control: false);
}
