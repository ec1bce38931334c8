"""Servers that the tests of the sync start, stop and kill, on loopback.

serve.py webdav PORT FOLDER   asks for the name `potter` and the password `slip and sieve`
serve.py s3 PORT              forgets everything when it ends; has the bucket `pots`
serve.py all FOLDER           all that a shell's own HTTP client is to meet; FOLDER/servers.json says where each is

Says "ready" on a line of its own once it listens. With `all` it ends when its standard input does.
"""

import datetime
import ipaddress
import json
import os
import signal
import socketserver
import sys
import threading
import time
from pathlib import Path

HOST = "127.0.0.1"


def webdav(port, folder):
    server = webdav_server(port, folder)
    print("ready", flush=True)
    server.serve()


def webdav_server(port, folder, certificate=None, key=None):
    from cheroot import wsgi
    from cheroot.ssl.builtin import BuiltinSSLAdapter
    from wsgidav.wsgidav_app import WsgiDAVApp

    app = WsgiDAVApp({
        "provider_mapping": {"/": folder},
        "simple_dc": {"user_mapping": {"*": {"potter": {"password": "slip and sieve"}}}},
        "http_authenticator": {"accept_basic": True, "accept_digest": False, "default_to_digest": False},
        "verbose": 0,
        "logging": {"enable": False},
    })
    server = wsgi.Server((HOST, int(port)), app)
    if certificate:
        server.ssl_adapter = BuiltinSSLAdapter(certificate, key)
    server.prepare()
    return server


def s3(port):
    s3_server(port)
    print("ready", flush=True)
    threading.Event().wait()


def s3_server(port):
    """Starts it, and answers with its port."""
    import boto3
    from moto.server import ThreadedMotoServer

    server = ThreadedMotoServer(ip_address=HOST, port=int(port), verbose=False)
    server.start()
    port = server.get_host_and_port()[1]
    client = boto3.client(
        "s3",
        endpoint_url=f"http://{HOST}:{port}",
        region_name="us-east-1",
        aws_access_key_id="potter",
        aws_secret_access_key="slip and sieve",
    )
    client.create_bucket(Bucket="pots")
    return port


def certificates(folder):
    """An authority, and three servers' certificates that it vouches for: a good one, an expired one, and another host's."""
    from cryptography import x509
    from cryptography.hazmat.primitives import hashes, serialization
    from cryptography.hazmat.primitives.asymmetric import ec
    from cryptography.x509.oid import NameOID

    now = datetime.datetime.now(datetime.UTC)
    day = datetime.timedelta(days=1)

    def name(text):
        return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, text)])

    def signed(subject, key, begin, end, *extensions):
        builder = (
            x509.CertificateBuilder()
            .subject_name(subject)
            .issuer_name(own)
            .public_key(key.public_key())
            .serial_number(x509.random_serial_number())
            .not_valid_before(begin)
            .not_valid_after(end)
        )
        for extension, critical in extensions:
            builder = builder.add_extension(extension, critical)
        return builder.sign(authority, hashes.SHA256()).public_bytes(serialization.Encoding.PEM)

    def is_authority(yes):
        return x509.BasicConstraints(ca=yes, path_length=0 if yes else None), True

    own, authority = name("A studio's own authority"), ec.generate_private_key(ec.SECP256R1())
    here = [x509.DNSName("localhost"), x509.IPAddress(ipaddress.ip_address(HOST))]
    (folder / "authority.pem").write_bytes(signed(own, authority, now - 90 * day, now + 7 * day, is_authority(True)))
    for called, hosts, begin, end in [
        ("good", here, now - day, now + 7 * day),
        ("expired", here, now - 60 * day, now - 30 * day),
        ("other_host", [x509.DNSName("kiln.example")], now - day, now + 7 * day),
    ]:
        key = ec.generate_private_key(ec.SECP256R1())
        subject = name(f"storage box, {called}")
        (folder / f"{called}.pem").write_bytes(
            signed(subject, key, begin, end, is_authority(False), (x509.SubjectAlternativeName(hosts), False))
        )
        (folder / f"{called}.key").write_bytes(
            key.private_bytes(
                serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
            )
        )


class Hostile(socketserver.StreamRequestHandler):
    """Answers every request with the trick that its path begins with, and closes the connection."""

    def handle(self):
        line = self.rfile.readline(2000).decode("latin-1").split(" ")
        if len(line) < 3:
            return
        length = 0
        while (header := self.rfile.readline(8000)) not in (b"\r\n", b""):
            if header.lower().startswith(b"content-length:"):
                length = int(header.split(b":")[1])
        self.rfile.read(length)
        with self.server.lock, open(self.server.asked, "a") as asked:
            asked.write(f"{line[0]} {line[1]}\n")
        try:
            getattr(self, line[1].split("/")[1])()
        except OSError:
            pass  # Whoever asked is gone.

    def say(self, status, headers, body=b""):
        self.wfile.write(f"HTTP/1.1 {status} As told\r\n{headers}\r\n".encode() + body)

    def silent(self):
        self.connection.settimeout(300)
        self.connection.recv(1)

    def slow(self):
        self.say(207, "Content-Length: 100000\r\n")
        for _ in range(1000):
            self.wfile.write(b" ")
            time.sleep(0.3)

    def longer(self):
        self.say(207, "Content-Length: 10\r\n", b"<a/>" * 100)

    def shorter(self):
        self.say(207, "Content-Length: 1000\r\n", b"<a/>")

    def endless(self):
        self.say(207, "Transfer-Encoding: chunked\r\n")
        for _ in range(400):
            self.wfile.write(b"100000\r\n" + b" " * (1 << 20) + b"\r\n")

    def circle(self):
        self.say(307, "Location: /circle/\r\nContent-Length: 0\r\n")

    def away(self):
        port = self.server.server_address[1]
        self.say(307, f"Location: http://localhost:{port}/witness/\r\nContent-Length: 0\r\n")

    def witness(self):
        self.say(207, "Content-Length: 0\r\n")

    def dropped(self):
        self.wfile.write(b"HTTP/1.1 207 Multi-Sta")

    def garbage(self):
        self.wfile.write(b"\x16\x03\x01 nothing that speaks HTTP\r\n\r\n")

    def locked(self):
        self.say(401, 'WWW-Authenticate: Basic realm="pots"\r\nContent-Length: 0\r\n')

    def portal(self):
        page = b"<html><body>Sign in to use this network<br></body></html>"
        self.say(200, f"Content-Type: text/html\r\nContent-Length: {len(page)}\r\n", page)


class HostileServer(socketserver.ThreadingTCPServer):
    daemon_threads = True
    allow_reuse_address = True
    request_queue_size = 64


def all_servers(folder):
    folder = Path(folder).absolute()
    folder.mkdir(parents=True, exist_ok=True)
    certificates(folder)
    hostile = HostileServer((HOST, 0), Hostile)
    hostile.lock, hostile.asked = threading.Lock(), folder / "asked"
    hostile.asked.write_text("")
    threading.Thread(target=hostile.serve_forever, daemon=True).start()
    where = {"hostile": f"http://{HOST}:{hostile.server_address[1]}", "s3": f"http://{HOST}:{s3_server(0)}"}
    for called in ["plain", "good", "expired", "other_host"]:
        files = folder / "files" / called
        # One for each test, so that none meets another's studio.
        for place in ["step", "after", "proxy"]:
            (files / place).mkdir(parents=True)
        papers = [] if called == "plain" else [str(folder / f"{called}.pem"), str(folder / f"{called}.key")]
        server = webdav_server(0, str(files), *papers)
        threading.Thread(target=server.serve, daemon=True).start()
        where[called] = f"{'https' if papers else 'http'}://{HOST}:{server.bind_addr[1]}"
    (folder / "servers.json").write_text(json.dumps(where))
    print("ready", flush=True)
    sys.stdin.read()
    os._exit(0)  # Servers have threads that nothing else ends.


if __name__ == "__main__":
    signal.signal(signal.SIGTERM, lambda *_: os._exit(0))
    {"webdav": webdav, "s3": s3, "all": all_servers}[sys.argv[1]](*sys.argv[2:])
