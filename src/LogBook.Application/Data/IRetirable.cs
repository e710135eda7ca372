namespace LogBook.Application.Data;

/// <summary>A set-up record: never deleted, because history refers to it, but taken out of use with a reason.</summary>
public interface IRetirable
{
    string Code { get; }

    string Name { get; }

    string Document { get; set; }

    DateTime? RetiredAt { get; set; }

    string? RetiredWhy { get; set; }
}
