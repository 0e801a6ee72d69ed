package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientOptions;
import io.vertx.core.http.HttpClientRequest;
import io.vertx.core.http.HttpClientResponse;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpVersion;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R65: whoever sends slowly holds a connection and no worker")
class SlowSendersTest {
    private static final int SENDERS = 200;
    private static final String BODY = "login=nobody&password=" + "x".repeat(1_000);

    private static final int STREAMS = 80; // of one connection; the server allows a hundred

    @TestHTTPResource("/") URI base;
    @Inject Vertx vertx;

    private Socket slow(String type) throws IOException {
        var socket = new Socket("127.0.0.1", base.getPort());
        socket.getOutputStream()
            .write(("POST /sign-in HTTP/1.1\r\nHost: 127.0.0.1:" + base.getPort() + "\r\nContent-Type: " + type
                + "\r\nContent-Length: "
                + BODY.length() + "\r\nConnection: close\r\n\r\n" + BODY.substring(0, 20))
                .getBytes(StandardCharsets.ISO_8859_1));
        return socket;
    }

    private static boolean isStillWaiting(Socket socket) throws IOException {
        try {
            socket.setSoTimeout(1);
            socket.getInputStream().read();
            return false;
        } catch (SocketTimeoutException e) {
            return true;
        }
    }

    private static String finish(Socket socket) throws IOException {
        socket.setSoTimeout(30_000);
        socket.getOutputStream().write(BODY.substring(20).getBytes(StandardCharsets.ISO_8859_1));
        return new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1);
    }

    @Test
    void pagesAndFormsGoOnWhileTwoHundredSendAndThenTheyAreAnsweredToo() throws IOException {
        List<Socket> sockets = new ArrayList<>();
        try {
            for (int i = 0; i < SENDERS; i++) {
                sockets.add(slow(i % 2 == 0 ? "application/x-www-form-urlencoded" : "multipart/form-data; boundary=x"));
            }
            for (int i = 0; i < 40; i++) {
                assertThat(RestAssured.get("/sign-in").statusCode()).isEqualTo(200);
            }
            for (int i = 0; i < 10; i++) {
                assertThat(RestAssured.given().formParam("login", "nobody").post("/sign-in").statusCode())
                    .isEqualTo(400);
            }
            for (Socket socket : sockets) {
                assertThat(isStillWaiting(socket)).as("nobody was cut off to make room").isTrue();
            }
            for (Socket socket : sockets) {
                assertThat(finish(socket)).startsWith("HTTP/1.1 4");
            }
        } finally {
            for (Socket socket : sockets) {
                socket.close();
            }
        }
    }

    private HttpClient overHttp2() {
        return vertx.createHttpClient(
            new HttpClientOptions().setProtocolVersion(HttpVersion.HTTP_2).setHttp2ClearTextUpgrade(false)
                .setHttp2MaxPoolSize(1).setHttp2MultiplexingLimit(STREAMS));
    }

    private static <T> T done(Future<T> future) throws Exception {
        return future.toCompletionStage().toCompletableFuture().get(60, TimeUnit.SECONDS);
    }

    /** A form whose end does not come yet; its length is not told, as HTTP/2 allows. */
    private HttpClientRequest begun(HttpClient client, String type) throws Exception {
        HttpClientRequest request = done(client.request(HttpMethod.POST, base.getPort(), "127.0.0.1", "/sign-in"));
        request.setChunked(true).putHeader("Content-Type", type);
        done(request.write(BODY.substring(0, 20)));
        return request;
    }

    @Test
    @DisplayName("R65: eighty slow forms on each of two connections of HTTP/2 hold no worker either, and are answered when they are whole")
    void manyStreamsOfOneConnectionHoldNoWorkerEither() throws Exception {
        List<HttpClient> clients = List.of(overHttp2(), overHttp2());
        List<HttpClientRequest> requests = new ArrayList<>();
        try {
            for (int i = 0; i < 2 * STREAMS; i++) {
                requests.add(begun(clients.get(i % 2),
                    i % 4 < 2 ? "application/x-www-form-urlencoded" : "multipart/form-data; boundary=x"));
            }
            assertThat(requests).allMatch(request -> request.version() == HttpVersion.HTTP_2);
            for (int i = 0; i < 40; i++) {
                assertThat(RestAssured.get("/sign-in").statusCode()).isEqualTo(200);
            }
            for (int i = 0; i < 10; i++) {
                assertThat(RestAssured.given().formParam("login", "nobody").post("/sign-in").statusCode())
                    .isEqualTo(400);
            }
            assertThat(requests).as("nobody was cut off to make room")
                .noneMatch(request -> request.response().isComplete());
            for (HttpClientRequest request : requests) {
                request.end(BODY.substring(20));
            }
            for (HttpClientRequest request : requests) {
                assertThat(done(request.response()).statusCode()).isBetween(400, 499);
            }
        } finally {
            for (HttpClient client : clients) {
                done(client.close());
            }
        }
    }

    @Test
    @DisplayName("R65: over HTTP/2 too a body longer than any is refused on its way, in an answer that HTTP/2 allows")
    void aStreamLongerThanAnyIsRefusedOnItsWay() throws Exception {
        HttpClient client = overHttp2();
        try {
            HttpClientRequest request = begun(client, "application/x-www-form-urlencoded");
            HttpClientRequest other = begun(client, "application/x-www-form-urlencoded");
            for (int i = 0; i < 13; i++) {
                request.write("x".repeat(1 << 20));
            }
            HttpClientResponse answer = done(request.response());
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.headers().contains("Connection"))
                .as("RFC 9113, 8.2.2: no header that speaks of the connection").isFalse();
            other.end(BODY.substring(20));
            assertThat(done(other.response()).statusCode()).as("the same connection's other form").isEqualTo(400);
            assertThat(other.connection()).isSameAs(request.connection());
        } finally {
            done(client.close());
        }
    }

    @Test
    void oneNetworkFillsHalfTheRoomAtMostAndWhatIsGoneMakesRoom() {
        var waiting = new Waiting(100);
        assertThat(waiting.room("192.0.2.1", 50)).isTrue();
        assertThat(waiting.room("192.0.2.1", 1)).isFalse();
        assertThat(waiting.room("192.0.2.2", 50)).isTrue();
        assertThat(waiting.room("192.0.2.3", 1)).isFalse();
        waiting.gone("192.0.2.1", 50);
        assertThat(waiting.together()).isEqualTo(50);
        assertThat(waiting.room("192.0.2.1", 50)).isTrue();
    }

    @Test
    void halfAMinuteIsGivenToEverybodyAndAPaceIsAskedAfterwards() {
        assertThat(Receiving.tooSlow(0, 30)).isFalse();
        assertThat(Receiving.tooSlow(0, 31)).isTrue();
        assertThat(Receiving.tooSlow(4_000, 31)).isFalse();
        assertThat(Receiving.tooSlow(3_999, 31)).isTrue();
    }

    @Test
    void aBodyInChunksLongerThanAnyIsRefusedOnItsWay() throws IOException {
        try (var socket = new Socket("127.0.0.1", base.getPort())) {
            socket.setSoTimeout(30_000);
            OutputStream out = socket.getOutputStream();
            out.write(("POST /sign-in HTTP/1.1\r\nHost: 127.0.0.1:" + base.getPort()
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                + "Transfer-Encoding: chunked\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
            byte[] chunk = ("100000\r\n" + "x".repeat(1 << 20) + "\r\n").getBytes(StandardCharsets.ISO_8859_1);
            try {
                for (int i = 0; i < 13; i++) {
                    out.write(chunk);
                }
            } catch (IOException cutOff) {
                // the answer came before the rest was sent
            }
            assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1))
                .isEqualTo("HTTP/1.1 413");
        }
    }

    @Test
    void whoWaitsToBeAskedForTheBodyIsAsked() throws IOException {
        try (var socket = new Socket("127.0.0.1", base.getPort())) {
            socket.setSoTimeout(30_000);
            socket.getOutputStream()
                .write(("POST /sign-in HTTP/1.1\r\nHost: 127.0.0.1:" + base.getPort()
                    + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                    + "Content-Length: 3\r\nExpect: 100-continue\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.ISO_8859_1));
            assertThat(new String(socket.getInputStream().readNBytes(25), StandardCharsets.ISO_8859_1))
                .startsWith("HTTP/1.1 100");
            socket.getOutputStream().write("a=b".getBytes(StandardCharsets.ISO_8859_1));
            assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1))
                .contains("HTTP/1.1 400");
        }
    }
}
