namespace LogBook.Application.Tests.RecordPacks;

/// <summary>Where bytes go and are not kept.</summary>
/// <param name="passed">Told after each write how many have gone so far.</param>
internal sealed class PassingStream(Action<long> passed) : Stream
{
    private long _length;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => _length;

    public override long Position
    {
        get => _length;
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => passed(_length += count);

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
