using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace LogBook.Migrations.PostgreSql.Migrations
{
    /// <inheritdoc />
    public partial class Ahead : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Ahead",
                table: "Systems",
                type: "text",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Ahead",
                table: "Systems");
        }
    }
}
